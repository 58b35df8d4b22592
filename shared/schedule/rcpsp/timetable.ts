import { cell } from './cell.ts';
import type { Project } from './project.ts';
import { reasonOf, type Say } from './reason.ts';
import { atLeast, atMost, type Trail, type Watcher } from './trail.ts';

const NOTHING = -1;

/**
 * The timetable of what must run: between its latest start and its earliest end an activity uses
 * its resources whatever happens. Where these parts leave too little for another, it starts later
 * or ends sooner. What is concluded is explained at one point in time (A. Schutt, T. Feydy,
 * P. J. Stuckey and M. G. Wallace, "Explaining the cumulative propagator", Constraints 16, 2011).
 */
export class Timetable implements Watcher {
  readonly #activities: number;
  readonly #kinds: number;
  readonly #periods: number;
  readonly #durations: Int32Array;
  readonly #demands: Int32Array;
  readonly #capacities: Int32Array;
  /** What must run uses, `period * kinds + kind`. */
  readonly #used: Int32Array;
  /** 1 for an activity whose bounds have moved since it was last looked at. */
  readonly #stirred: Uint8Array;
  #changedFrom: number;
  #changedTo = 0;
  /** A place in `#used` that is above its capacity. */
  #overload = NOTHING;

  constructor({ durations, demands, capacities }: Project, horizon: number) {
    this.#activities = durations.length;
    this.#kinds = capacities.length;
    this.#durations = durations;
    this.#demands = demands;
    this.#capacities = capacities;
    this.#periods = horizon + Math.max(0, ...durations) + 1;
    this.#used = new Int32Array(this.#periods * this.#kinds);
    this.#stirred = new Uint8Array(this.#activities).fill(1);
    this.#changedFrom = 0;
    this.#changedTo = this.#periods;
  }

  #value: Int32Array = new Int32Array(0);

  /** Begins to follow these bounds, which so far are as given. */
  follow(value: Int32Array): void {
    this.#value = value;
    for (let i = 0; i < this.#activities; i++) this.#use(i, this.#latest(i), this.#end(i), 1);
  }

  moved(bound: number, old: number, value: number): void {
    const activity = bound >> 1;
    if (activity >= this.#activities) return;
    this.#stirred[activity] = 1;
    this.#change(bound, old, value, 1);
  }

  takenBack(bound: number, old: number, value: number): void {
    if (bound >> 1 >= this.#activities) return;
    this.#overload = NOTHING;
    this.#change(bound, old, value, -1);
  }

  /** The part that a change of a bound adds to what must run. */
  #change(bound: number, old: number, value: number, sign: number): void {
    const activity = bound >> 1;
    const duration = cell(this.#durations, activity);
    if ((bound & 1) === 0) {
      this.#use(activity, Math.max(this.#latest(activity), old + duration), value + duration, sign);
    } else {
      this.#use(activity, -value, Math.min(-old, this.#end(activity)), sign);
    }
  }

  #latest(activity: number): number {
    return -cell(this.#value, atMost(activity));
  }

  #end(activity: number): number {
    return cell(this.#value, atLeast(activity)) + cell(this.#durations, activity);
  }

  #use(activity: number, from: number, to: number, sign: number): void {
    if (from >= to) return;
    if (sign > 0) {
      if (from < this.#changedFrom) this.#changedFrom = from;
      if (to > this.#changedTo) this.#changedTo = to;
    }
    const kinds = this.#kinds;
    for (let kind = 0; kind < kinds; kind++) {
      const demand = cell(this.#demands, activity * kinds + kind);
      if (demand === 0) continue;
      const capacity = cell(this.#capacities, kind);
      for (let time = from; time < to; time++) {
        const place = time * kinds + kind;
        const used = cell(this.#used, place) + sign * demand;
        this.#used[place] = used;
        if (used > capacity) this.#overload = place;
      }
    }
  }

  /** Draws what follows; false at a contradiction: an overload, or bounds that meet. */
  propagate(trail: Trail): boolean {
    if (this.#overload !== NOTHING) return false;
    const from = this.#changedFrom;
    const to = this.#changedTo;
    this.#changedFrom = this.#periods;
    this.#changedTo = 0;
    for (let activity = 0; activity < this.#activities; activity++) {
      const duration = cell(this.#durations, activity);
      if (duration === 0 || trail.isFixed(activity)) continue;
      const isNear =
        cell(this.#value, atLeast(activity)) < to && this.#latest(activity) + duration > from;
      if (!isNear && this.#stirred[activity] === 0) continue;
      this.#stirred[activity] = 0;
      if (!this.#later(trail, activity, duration)) return false;
      if (!this.#sooner(trail, activity, duration)) return false;
    }
    return true;
  }

  #later(trail: Trail, activity: number, duration: number): boolean {
    const bound = atLeast(activity);
    const latest = this.#latest(activity);
    for (let time = cell(this.#value, bound); ; time++) {
      if (time >= Math.min(cell(this.#value, bound) + duration, latest)) return true;
      const place = this.#short(activity, time);
      if (place === NOTHING) continue;
      if (!trail.push(bound, time + 1, reasonOf('timetable', place))) return false;
    }
  }

  #sooner(trail: Trail, activity: number, duration: number): boolean {
    const bound = atMost(activity);
    const end = this.#end(activity);
    for (let time = this.#latest(activity) + duration - 1; ; time--) {
      if (time < Math.max(this.#latest(activity), end)) return true;
      const place = this.#short(activity, time);
      if (place === NOTHING) continue;
      if (!trail.push(bound, duration - time, reasonOf('timetable', place))) return false;
    }
  }

  /** Where in a period there is too little for an activity. */
  #short(activity: number, time: number): number {
    const kinds = this.#kinds;
    for (let kind = 0; kind < kinds; kind++) {
      const demand = cell(this.#demands, activity * kinds + kind);
      const place = time * kinds + kind;
      if (demand > 0 && cell(this.#used, place) + demand > cell(this.#capacities, kind)) {
        return place;
      }
    }
    return NOTHING;
  }

  /** Why a bound was moved past a place, as things were then. */
  explain(place: number, bound: number, say: Say): void {
    const activity = bound >> 1;
    const time = Math.floor(place / this.#kinds);
    if ((bound & 1) === 0) say(bound, time + 1 - cell(this.#durations, activity));
    else say(bound, -time);
    const demand = cell(this.#demands, activity * this.#kinds + (place % this.#kinds));
    this.#sayUsers(place, demand, activity, say);
  }

  /** Whether a contradiction was an overload; it is explained, and forgotten. */
  explainOverload(say: Say): boolean {
    const place = this.#overload;
    if (place === NOTHING) return false;
    this.#sayUsers(place, 0, NOTHING, say);
    return true;
  }

  /** As many of those who must run there as leave too little. */
  #sayUsers(place: number, demand: number, except: number, say: Say): void {
    const time = Math.floor(place / this.#kinds);
    const kind = place % this.#kinds;
    let missing = cell(this.#capacities, kind) - demand + 1;
    for (let i = 0; i < this.#activities && missing > 0; i++) {
      const uses = cell(this.#demands, i * this.#kinds + kind);
      if (uses === 0 || i === except || this.#latest(i) > time || this.#end(i) <= time) continue;
      say(atLeast(i), time + 1 - cell(this.#durations, i));
      say(atMost(i), -time);
      missing -= uses;
    }
  }
}
