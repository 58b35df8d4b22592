import { cell } from './cell.ts';
import type { Project } from './project.ts';
import { reasonOf, type Say } from './reason.ts';
import { atLeast, atMost, type Trail } from './trail.ts';

/** Something scarce: how much there is, and who takes how much of it. */
type Scarce = {
  readonly capacity: number;
  readonly users: Int32Array;
  readonly takes: Int32Array;
  /** By activity, what it takes over all its time. */
  readonly work: Int32Array;
  /** The users by that, the most first. */
  readonly byWork: Int32Array;
  /** The users by earliest start, the latest first, and by latest end; nearly so from last time. */
  readonly byStart: Int32Array;
  readonly byEnd: Int32Array;
};

/** A stretch of time of one scarce thing. */
type Window = { readonly of: Scarce; readonly from: number; readonly to: number };

/**
 * Energetic reasoning over windows of time: those that must lie within one leave so much of it for
 * the others, who start later or end sooner if that is too little (edge finding; J. Carlier and
 * E. Pinson 1989, W. Nuijten 1994; with explanations as A. Schutt, T. Feydy and P. J. Stuckey,
 * CPAIOR 2013).
 */
export class Energy {
  readonly #durations: Int32Array;
  readonly #scarce: readonly Scarce[];
  /** By place on the trail, the window a conclusion there was drawn from. */
  readonly #windows: Window[] = [];
  #overload: Window | undefined;
  /** By activity, as at the beginning of a sweep. */
  readonly #early: Int32Array;
  readonly #end: Int32Array;

  constructor({ durations, capacities, demands }: Project, machines: readonly number[][]) {
    this.#durations = durations;
    const kinds = capacities.length;
    const resources = Array.from(capacities, (capacity, kind) =>
      scarce(
        capacity,
        durations,
        durations.map((duration, i) => (duration === 0 ? 0 : cell(demands, i * kinds + kind))),
      ),
    );
    const units = machines.map((members) => {
      const takes = new Int32Array(durations.length);
      for (const member of members) takes[member] = 1;
      return scarce(1, durations, takes);
    });
    this.#early = new Int32Array(durations.length);
    this.#end = new Int32Array(durations.length);
    this.#scarce = [...units, ...resources];
  }

  /** Draws what follows; false at a contradiction. Stops at the first conclusion. */
  propagate(trail: Trail): boolean {
    const before = trail.size;
    for (const of of this.#scarce) {
      if (!this.#sweep(trail, of)) return false;
      if (trail.size > before) return true;
    }
    return true;
  }

  /** All windows from an earliest start to a latest end; for each end, from late starts on. */
  #sweep(trail: Trail, of: Scarce): boolean {
    const { users, byStart, byEnd } = of;
    for (let i = 0; i < users.length; i++) {
      const user = cell(users, i);
      this.#early[user] = this.#earliest(trail, user);
      this.#end[user] = this.#lastEnd(trail, user);
    }
    sortBy(byStart, this.#early, -1);
    sortBy(byEnd, this.#end, 1);
    for (let i = 0; i < byEnd.length; i++) {
      const to = cell(this.#end, cell(byEnd, i));
      if (i > 0 && to === cell(this.#end, cell(byEnd, i - 1))) continue;
      const before = trail.size;
      if (!this.#sweepTo(trail, of, to)) return false;
      if (trail.size > before) return true;
    }
    return true;
  }

  #sweepTo(trail: Trail, of: Scarce, to: number): boolean {
    const most = cell(of.work, cell(of.byWork, 0));
    let energy = 0;
    for (let i = 0; i < of.byStart.length; i++) {
      const user = cell(of.byStart, i);
      if (cell(this.#end, user) > to) continue;
      const from = cell(this.#early, user);
      energy += cell(of.work, user);
      const left = of.capacity * (to - from) - energy;
      if (left >= most) continue;
      const window = { of, from, to };
      if (left < 0) {
        this.#overload = window;
        return false;
      }
      const before = trail.size;
      if (!this.#push(trail, window, left)) return false;
      if (trail.size > before) return true;
    }
    return true;
  }

  /** Moves those that do not fit into what is left of a window. */
  #push(trail: Trail, window: Window, left: number): boolean {
    const { of, from, to } = window;
    for (let i = 0; i < of.byWork.length; i++) {
      const user = cell(of.byWork, i);
      if (cell(of.work, user) <= left) return true;
      const early = cell(this.#early, user);
      const lastEnd = cell(this.#end, user);
      if (early >= from && lastEnd <= to) continue;
      const duration = cell(this.#durations, user);
      const fits = Math.floor(left / cell(of.takes, user));
      const overlap = Math.min(early + duration, to) - Math.max(early, from);
      if (overlap > fits) return this.#conclude(trail, window, atLeast(user), to - fits);
      const latest = lastEnd - duration;
      const lastOverlap = Math.min(lastEnd, to) - Math.max(latest, from);
      if (lastOverlap > fits) {
        return this.#conclude(trail, window, atMost(user), duration - from - fits);
      }
    }
    return true;
  }

  #conclude(trail: Trail, window: Window, bound: number, value: number): boolean {
    this.#windows[trail.size] = window;
    return trail.push(bound, value, reasonOf('energy', trail.size));
  }

  #earliest(trail: Trail, activity: number): number {
    return cell(trail.value, atLeast(activity));
  }

  #lastEnd(trail: Trail, activity: number): number {
    return cell(this.#durations, activity) - cell(trail.value, atMost(activity));
  }

  /** Why a bound was moved to as much as `value`, as things were then. */
  explain(rule: number, bound: number, value: number, trail: Trail, say: Say): void {
    const window = this.#windows[rule];
    if (window === undefined) return;
    const { of, from, to } = window;
    const activity = bound >> 1;
    const duration = cell(this.#durations, activity);
    // Against time, the window and the bounds change their sign.
    const isForward = (bound & 1) === 0;
    const first = isForward ? from : duration - to;
    const last = isForward ? to : duration - from;
    const start = cell(trail.value, bound);
    const overlap = Math.min(start + duration, last) - Math.max(start, first);
    const fits = Math.min(last - value, overlap - 1);
    say(bound, first + fits + 1 - duration);
    const enough = of.capacity * (to - from) - cell(of.takes, activity) * (fits + 1);
    this.#sayInside(window, enough, activity, trail, say);
  }

  /** Whether a contradiction was too much in one window; it is explained, and forgotten. */
  explainOverload(trail: Trail, say: Say): boolean {
    const window = this.#overload;
    if (window === undefined) return false;
    this.#overload = undefined;
    this.#sayInside(window, window.of.capacity * (window.to - window.from), -1, trail, say);
    return true;
  }

  /** As many of those inside as together need more than `enough`. */
  #sayInside(window: Window, enough: number, except: number, trail: Trail, say: Say): void {
    const { of, from, to } = window;
    let energy = 0;
    for (let i = 0; i < of.users.length && energy <= enough; i++) {
      const user = cell(of.users, i);
      if (user === except) continue;
      if (this.#earliest(trail, user) < from || this.#lastEnd(trail, user) > to) continue;
      say(atLeast(user), from);
      say(atMost(user), cell(this.#durations, user) - to);
      energy += cell(of.work, user);
    }
  }
}

function scarce(capacity: number, durations: Int32Array, takes: Int32Array): Scarce {
  const users = Int32Array.from(takes.keys()).filter((i) => cell(takes, i) > 0);
  const work = takes.map((taken, i) => taken * cell(durations, i));
  const byWork = users.toSorted((a, b) => cell(work, b) - cell(work, a));
  return { capacity, users, takes, work, byWork, byStart: users.slice(), byEnd: users.slice() };
}

/** Sorts by insertion what is nearly sorted already, by rising keys or, with -1, falling ones. */
function sortBy(list: Int32Array, keys: Int32Array, sign: 1 | -1): void {
  for (let i = 1; i < list.length; i++) {
    const item = cell(list, i);
    const key = sign * cell(keys, item);
    let place = i;
    while (place > 0 && sign * cell(keys, cell(list, place - 1)) > key) {
      list[place] = cell(list, place - 1);
      place--;
    }
    list[place] = item;
  }
}
