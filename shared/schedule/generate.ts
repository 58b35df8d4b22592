import { assert } from '../kernel/index.ts';
import { Arrangement } from './arrangement.ts';
import type { Attempt, Failure, Generated } from './generated.ts';
import type { Net, NetMode, Slot, Window } from './net.ts';
import { FAR_S } from './net.ts';
import { at, endOf, startOf } from './network.ts';
import type { Precedence } from './precedence.ts';
import { precedenceOf } from './precedence.ts';

/**
 * Serial schedule generation with unscheduling (Franck, Neumann and Schwindt, OR Spektrum 23,
 * 2001): one activity after the other gets the earliest slot it can have. If a maximum lag to
 * something placed shuts it out, that one is taken off and not placed again before it lets it in.
 */
export function generate(net: Net, attempt: Attempt): Generated {
  const generation = new Generation(net, attempt);
  attempt.placed?.forEach((slot, activity) => {
    if (slot) generation.arrangement.place(activity, slot);
  });
  const noiseS = Float64Array.from(net.modes, () => attempt.random() * attempt.noiseS);
  const ownS = noiseS.map((s, i) => s - at(attempt.boostS, i));
  return generation.run({ ...attempt, ownS });
}

/** One way through what is to be placed; `ownS` is added to each activity's key. */
export type Pass = Pick<Attempt, 'order' | 'stepsMost'> & { readonly ownS: ArrayLike<number> };

/** An arrangement that can be completed, again and again after something was taken off. */
export class Generation {
  readonly arrangement: Arrangement;
  readonly #net: Net;
  readonly #isIn: Uint8Array;
  readonly #order: Precedence;
  /** How many of those before each activity are still to be placed. */
  readonly #missing: Int32Array;
  /** What can be placed next, in no order, and where in it each is; -1 for not in it. */
  readonly #ready: number[] = [];
  readonly #readyAt: Int32Array;
  /** Those pinned in time go first; all before `#pinnedFrom` are placed. */
  readonly #pinned: readonly number[];
  #pinnedFrom = 0;
  /** Whatever was placed or taken off since this was emptied. */
  readonly touched = new Set<number>();

  constructor(net: Net, { only }: Pick<Attempt, 'only'> = {}) {
    this.#net = net;
    this.arrangement = new Arrangement(net);
    this.#isIn = Uint8Array.from(net.modes, (_, activity) =>
      (only?.has(activity) ?? true) ? 1 : 0,
    );
    const { loS } = this.arrangement.base;
    this.#order = precedenceOf(
      net,
      net.modes.map((_, activity) => at(loS, startOf(activity))),
    );
    this.#missing = Int32Array.from(this.#order.before, (before) =>
      before.reduce((sum, activity) => sum + at(this.#isIn, activity), 0),
    );
    this.#readyAt = new Int32Array(net.size).fill(-1);
    this.#pinned = net.modes.flatMap((modes, activity) =>
      modes[0]?.anyHour && this.#isIn[activity] === 1 ? [activity] : [],
    );
    for (let activity = 0; activity < net.size; activity++) this.#recount(activity);
    this.arrangement.onChange = (activity, isPlaced) => this.#count(activity, isPlaced);
  }

  /** Places all that is not. */
  run(pass: Pass): Generated {
    for (let step = 0; ; step++) {
      const activity = this.#next(pass);
      if (activity === undefined) return { ok: true, slots: this.arrangement.slots };
      const slot = this.#bestSlot(activity);
      const lost = step >= pass.stepsMost;
      if (lost || !slot || !this.#settle(activity, slot)) {
        return { ok: false, failure: this.#failure(activity) };
      }
    }
  }

  /** The activity to place next: nothing that comes before it is missing, and its key is least. */
  #next(pass: Pass): number | undefined {
    for (; this.#pinnedFrom < this.#pinned.length; this.#pinnedFrom++) {
      const pinned = at(this.#pinned, this.#pinnedFrom);
      if (!this.arrangement.slotOf(pinned)) return pinned;
    }
    let best: number | undefined;
    let bestKey = Number.POSITIVE_INFINITY;
    for (const activity of this.#ready) {
      const key = this.#key(activity, pass);
      if (key > bestKey || (key === bestKey && activity > (best ?? activity))) continue;
      [best, bestKey] = [activity, key];
    }
    return best;
  }

  #key(activity: number, { order, ownS }: Pass): number {
    const own = at(ownS, activity);
    if (typeof order === 'object') return at(order, activity) + own;
    const { windows, base } = this.arrangement;
    const soonest = at(windows.loS, startOf(activity));
    const urgent = at(base.hiS, startOf(activity));
    // The other rule, and then the order of the lags, decides between equals.
    const [first, second] = order === 'soonest' ? [soonest, urgent] : [urgent, soonest];
    const tie = (second + FAR_S) / (4 * FAR_S) + at(this.#order.rank, activity) / FAR_S;
    return first + own + tie;
  }

  /** The slot that ends first among the modes, an earlier mode before a later one. */
  #bestSlot(activity: number): Slot | undefined {
    const { arrangement } = this;
    // What is placed may shut this slot out and is pushed then; the bounds may not.
    const window = arrangement.windowOf(activity, arrangement.base);
    let best: Slot | undefined;
    for (const mode of this.#net.modes[activity] ?? []) {
      const slot = arrangement.earliestSlot(activity, mode, window);
      if (slot && (!best || slot.endS < best.endS)) best = slot;
    }
    return best;
  }

  /** Places it, or pushes what shuts it out; false if that cannot give way. */
  #settle(activity: number, slot: Slot): boolean {
    const { windows } = this.arrangement;
    const startOverS = slot.startS - at(windows.hiS, startOf(activity));
    const endOverS = slot.endS - at(windows.hiS, endOf(activity));
    if (startOverS <= 0 && endOverS <= 0) {
      this.arrangement.place(activity, slot);
      return !windows.isBroken;
    }
    return startOverS >= endOverS
      ? this.arrangement.push(startOf(activity), startOverS)
      : this.arrangement.push(endOf(activity), endOverS);
  }

  #count(activity: number, isPlaced: boolean): void {
    this.touched.add(activity);
    if (this.#isIn[activity] === 0) return;
    for (const after of this.#order.after[activity] ?? []) {
      this.#missing[after] = at(this.#missing, after) + (isPlaced ? -1 : 1);
      this.#recount(after);
    }
    this.#recount(activity);
    if (!isPlaced) this.#pinnedFrom = 0;
  }

  /** Whether it is ready now. */
  #recount(activity: number): void {
    const isReady =
      this.#isIn[activity] === 1 &&
      at(this.#missing, activity) === 0 &&
      !this.arrangement.slotOf(activity);
    const place = at(this.#readyAt, activity);
    if (isReady === place >= 0) return;
    if (isReady) {
      this.#readyAt[activity] = this.#ready.length;
      this.#ready.push(activity);
      return;
    }
    const last = this.#ready.pop() ?? activity;
    this.#readyAt[activity] = -1;
    if (last === activity) return;
    this.#ready[place] = last;
    this.#readyAt[last] = place;
  }

  #failure(activity: number): Failure {
    const mode = this.#net.modes[activity]?.[0];
    assert(mode, 'every activity has a mode');
    const { arrangement } = this;
    const window = arrangement.windowOf(activity, arrangement.base);
    const find = (needs: NetMode['needs'], within: Window) =>
      arrangement.earliestSlot(activity, { ...mode, needs }, within);
    const need = mode.needs.findIndex((each) => !find([each], window));
    const free = { ...window, startHiS: FAR_S, endHiS: FAR_S };
    const later = find(mode.needs, free);
    const asked = need < 0 ? mode.needs : mode.needs.slice(need, need + 1);
    const blockers = arrangement.blockers(
      [...asked.flatMap(({ resources }) => resources), ...mode.states.map((s) => s.resource)],
      window,
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
