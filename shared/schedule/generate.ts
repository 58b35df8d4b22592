import { assert } from '../kernel/index.ts';
import { Board } from './board.ts';
import type { Attempt, Failure, Generated } from './generated.ts';
import type { Net, NetMode, Slot, Window } from './net.ts';
import { FAR_S } from './net.ts';
import { activityOf, at, endOf, startOf } from './network.ts';
import { Places } from './places.ts';
import type { Precedence } from './precedence.ts';
import { precedenceOf } from './precedence.ts';
import { earliestSlot } from './slot.ts';
import { Windows } from './windows.ts';

/**
 * Serial schedule generation with unscheduling (Franck, Neumann and Schwindt, OR Spektrum 23,
 * 2001): one activity after the other gets the earliest slot it can have. If a maximum lag to
 * something placed shuts it out, that one is taken off and not placed again before it lets it in.
 */
export function generate(net: Net, attempt: Attempt): Generated {
  return new Generation(net, attempt).run();
}

class Generation {
  readonly #net: Net;
  readonly #attempt: Attempt;
  /** Windows from bounds and pushes alone, and those that what is placed leaves. */
  readonly #base: Windows;
  readonly #windows: Windows;
  readonly #order: Precedence;
  readonly #noiseS: Float64Array;
  /** How many of those before each activity are still to be placed. */
  readonly #missing: Int32Array;
  readonly #placed: (Slot | undefined)[];
  readonly #board: Board;
  readonly #places: Places;

  constructor(net: Net, attempt: Attempt) {
    this.#net = net;
    this.#attempt = attempt;
    this.#base = new Windows(net.arcs, net.loS, net.hiS);
    this.#windows = new Windows(net.arcs, net.loS, net.hiS);
    const startLoS = net.modes.map((_, activity) => at(this.#base.loS, startOf(activity)));
    this.#order = precedenceOf(net, startLoS);
    this.#noiseS = Float64Array.from(net.modes, () => attempt.random() * attempt.noiseS);
    this.#missing = Int32Array.from(
      this.#order.before,
      (before) => before.filter((activity) => this.#isIn(activity)).length,
    );
    this.#placed = net.modes.map(() => undefined);
    this.#board = new Board(net.resources);
    this.#places = new Places(net, this.#board, this.#placed);
  }

  run(): Generated {
    this.#attempt.placed?.forEach((slot, activity) => {
      if (slot) this.#place(activity, slot);
    });
    for (let step = 0; ; step++) {
      const activity = this.#next();
      if (activity === undefined) return { ok: true, slots: this.#placed };
      const slot = this.#bestSlot(activity);
      const lost = step >= this.#attempt.stepsMost;
      if (lost || !slot || !this.#settle(activity, slot)) {
        return { ok: false, failure: this.#failure(activity) };
      }
    }
  }

  /** The activity to place next: nothing that comes before it is missing, and its key is least. */
  #next(): number | undefined {
    let best: number | undefined;
    let bestKey = Number.POSITIVE_INFINITY;
    for (let activity = 0; activity < this.#net.size; activity++) {
      if (this.#placed[activity] || !this.#isIn(activity)) continue;
      const pinned = this.#net.modes[activity]?.[0]?.anyHour ?? false;
      if (pinned) return activity;
      if (at(this.#missing, activity) > 0) continue;
      const key = this.#key(activity);
      if (key < bestKey) [best, bestKey] = [activity, key];
    }
    return best;
  }

  #key(activity: number): number {
    const { order, boostS } = this.#attempt;
    const own = at(this.#noiseS, activity) - at(boostS, activity);
    if (typeof order === 'object') return at(order, activity) + own;
    const soonest = at(this.#windows.loS, startOf(activity));
    const urgent = at(this.#base.hiS, startOf(activity));
    // The other rule, and then the order of the lags, decides between equals.
    const [first, second] = order === 'soonest' ? [soonest, urgent] : [urgent, soonest];
    const tie = (second + FAR_S) / (4 * FAR_S) + at(this.#order.rank, activity) / FAR_S;
    return first + own + tie;
  }

  #isIn(activity: number): boolean {
    return this.#attempt.only?.has(activity) ?? true;
  }

  /** The slot that ends first among the modes, an earlier mode before a later one. */
  #bestSlot(activity: number): Slot | undefined {
    let best: Slot | undefined;
    for (const mode of this.#net.modes[activity] ?? []) {
      // What is placed may shut this slot out and is pushed then; the bounds may not.
      const window = this.#window(activity, this.#base.hiS);
      const slot = earliestSlot(activity, mode, window, this.#board, this.#places);
      if (slot && (!best || slot.endS < best.endS)) best = slot;
    }
    return best;
  }

  #window(activity: number, hiS: Int32Array): Window {
    return {
      startLoS: at(this.#windows.loS, startOf(activity)),
      startHiS: at(hiS, startOf(activity)),
      endLoS: at(this.#windows.loS, endOf(activity)),
      endHiS: at(hiS, endOf(activity)),
    };
  }

  /** Places it, or pushes what shuts it out; false if that cannot give way. */
  #settle(activity: number, slot: Slot): boolean {
    const { hiS } = this.#windows;
    const startOverS = slot.startS - at(hiS, startOf(activity));
    const endOverS = slot.endS - at(hiS, endOf(activity));
    if (startOverS <= 0 && endOverS <= 0) {
      this.#place(activity, slot);
      return !this.#windows.isBroken;
    }
    return startOverS >= endOverS
      ? this.#push(this.#shutBy(startOf(activity)), startOverS)
      : this.#push(this.#shutBy(endOf(activity)), endOverS);
  }

  /** The placed node that a window's upper end hangs on. */
  #shutBy(node: number): number {
    const own = activityOf(node);
    let bound = node;
    while (activityOf(bound) === own || !this.#placed[activityOf(bound)]) {
      const arc = at(this.#windows.hiBy, bound);
      assert(arc >= 0, 'a slot within the bounds is shut out by something placed');
      bound = at(this.#net.arcs.to, arc);
    }
    return bound;
  }

  #push(node: number, byS: number): boolean {
    const slot = this.#placed[activityOf(node)];
    assert(slot, 'what is pushed is placed');
    const timeS = node === startOf(activityOf(node)) ? slot.startS : slot.endS;
    this.#base.notBefore(node, timeS + byS);
    if (this.#base.isBroken) return false;
    this.#unplaceTooEarly();
    return true;
  }

  #unplaceTooEarly(): void {
    const { loS } = this.#base;
    this.#windows.copyFrom(this.#base);
    this.#placed.forEach((slot, activity) => {
      if (!slot) return;
      const tooEarly =
        slot.startS < at(loS, startOf(activity)) || slot.endS < at(loS, endOf(activity));
      if (tooEarly) this.#unplace(activity, slot);
      else this.#fix(activity, slot);
    });
  }

  #place(activity: number, slot: Slot): void {
    this.#placed[activity] = slot;
    this.#count(activity, -1);
    this.#fix(activity, slot);
    const { mode, startS, endS } = slot;
    slot.uses.forEach((resource, need) => {
      const amount = mode.needs[need]?.amount ?? 0;
      this.#board.add(resource, { activity, startS, endS, amount, state: -1 });
    });
    for (const { resource, state } of mode.states) {
      this.#board.add(resource, { activity, startS, endS, amount: 0, state });
    }
  }

  #unplace(activity: number, { mode, uses }: Slot): void {
    this.#placed[activity] = undefined;
    this.#count(activity, 1);
    for (const resource of uses) this.#board.remove(resource, activity);
    for (const { resource } of mode.states) this.#board.remove(resource, activity);
  }

  #count(activity: number, missing: 1 | -1): void {
    if (!this.#isIn(activity)) return;
    for (const after of this.#order.after[activity] ?? []) {
      this.#missing[after] = at(this.#missing, after) + missing;
    }
  }

  #fix(activity: number, { startS, endS }: Slot): void {
    this.#windows.fix(startOf(activity), startS);
    this.#windows.fix(endOf(activity), endS);
  }

  #failure(activity: number): Failure {
    const mode = this.#net.modes[activity]?.[0];
    assert(mode, 'every activity has a mode');
    const window = this.#window(activity, this.#base.hiS);
    const find = (needs: NetMode['needs'], within: Window) =>
      earliestSlot(activity, { ...mode, needs }, within, this.#board, this.#places);
    const need = mode.needs.findIndex((each) => !find([each], window));
    const free = { ...window, startHiS: FAR_S, endHiS: FAR_S };
    const later = find(mode.needs, free);
    const asked = need < 0 ? mode.needs : mode.needs.slice(need, need + 1);
    const blockers = this.#board.blockers(
      [...asked.flatMap(({ resources }) => resources), ...mode.states.map((s) => s.resource)],
      window.startLoS,
      window.endHiS,
    );
    return {
      activity,
      mode,
      window,
      need: need < 0 ? undefined : need,
      shortS: later && later.endS - window.endHiS,
      blockers,
    };
  }
}
