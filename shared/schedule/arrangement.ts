import { assert } from '../kernel/index.ts';
import { Board } from './board.ts';
import type { Net, NetMode, Slot, Window } from './net.ts';
import { activityOf, at, endOf, startOf } from './network.ts';
import { Places } from './places.ts';
import { earliestSlot } from './slot.ts';
import { Windows } from './windows.ts';

/**
 * What is placed, and the windows that it leaves to all that is not. Lags carry a change no further
 * than to the end of its tie, so taking something off costs no more than its tie does.
 */
export class Arrangement {
  readonly net: Net;
  /** Windows from bounds alone, with pushes, and those that what is placed leaves. */
  readonly #given: Windows;
  readonly base: Windows;
  readonly windows: Windows;
  readonly #placed: (Slot | undefined)[];
  readonly #board: Board;
  readonly #places: Places;
  /** Ties in which something was pushed. */
  readonly #pushed = new Set<number>();
  /** Called when an activity was placed or taken off. */
  onChange: (activity: number, isPlaced: boolean) => void = () => {};

  constructor(net: Net) {
    this.net = net;
    this.#given = Windows.of(net.arcs, net.loS, net.hiS);
    this.base = this.#given.copy();
    this.windows = this.#given.copy();
    this.#placed = net.modes.map(() => undefined);
    this.#board = new Board(net.resources);
    this.#places = new Places(net, this.#board, this.#placed);
  }

  get slots(): readonly (Slot | undefined)[] {
    return this.#placed;
  }

  slotOf(activity: number): Slot | undefined {
    return this.#placed[activity];
  }

  /** The window of an activity: as early as what is placed allows, as late as `latest` says. */
  windowOf(activity: number, { hiS }: Windows): Window {
    return {
      startLoS: at(this.windows.loS, startOf(activity)),
      startHiS: at(hiS, startOf(activity)),
      endLoS: at(this.windows.loS, endOf(activity)),
      endHiS: at(hiS, endOf(activity)),
    };
  }

  earliestSlot(activity: number, mode: NetMode, window: Window): Slot | undefined {
    return earliestSlot(activity, mode, window, this.#board, this.#places);
  }

  /** Who is met on any of these resources within a window. */
  blockers(resources: readonly number[], { startLoS, endHiS }: Window): number[] {
    return this.#board.blockers(resources, startLoS, endHiS);
  }

  place(activity: number, slot: Slot): void {
    this.#placed[activity] = slot;
    this.#fix(activity, slot);
    const { mode, startS, endS } = slot;
    slot.uses.forEach((resource, need) => {
      const amount = mode.needs[need]?.amount ?? 0;
      this.#board.add(resource, { activity, startS, endS, amount, state: -1 });
    });
    for (const { resource, state } of mode.states) {
      this.#board.add(resource, { activity, startS, endS, amount: 0, state });
    }
    this.onChange(activity, true);
  }

  /** Takes some off, with all that was pushed to make room for others. */
  takeOff(activities: Iterable<number>): void {
    for (const activity of activities) {
      this.#unplace(activity);
      this.#pushed.add(at(this.net.ties.tieOf, activity));
    }
    this.forgetPushes();
  }

  /** What was pushed may be as early again as it could before. */
  forgetPushes(): void {
    for (const tie of this.#pushed) {
      this.base.copyTimes(this.#given, this.#membersOf(tie));
      this.#workOut(tie);
    }
    this.#pushed.clear();
  }

  /** The seconds that a state resource takes to change between what is placed on it. */
  changesS(resource: number): number {
    return this.#board.changesS(resource);
  }

  /**
   * Lets what shuts a slot out be so much later than it is: it, and all that cannot stay before it,
   * is taken off. False if bounds do not allow that.
   */
  push(shutOut: number, byS: number): boolean {
    const node = this.#shutBy(shutOut);
    const slot = this.#placed[activityOf(node)];
    assert(slot, 'what is pushed is placed');
    const timeS = node === startOf(activityOf(node)) ? slot.startS : slot.endS;
    this.base.notBefore(node, timeS + byS);
    if (this.base.isBroken) return false;
    const tie = at(this.net.ties.tieOf, activityOf(node));
    this.#pushed.add(tie);
    const { loS } = this.base;
    for (const activity of this.#membersOf(tie)) {
      const its = this.#placed[activity];
      if (!its) continue;
      const isEarly =
        its.startS < at(loS, startOf(activity)) || its.endS < at(loS, endOf(activity));
      if (isEarly) this.#unplace(activity);
    }
    this.#workOut(tie);
    return true;
  }

  /** The placed node that the upper end of a window hangs on. */
  #shutBy(node: number): number {
    const own = activityOf(node);
    let bound = node;
    while (activityOf(bound) === own || !this.#placed[activityOf(bound)]) {
      const arc = at(this.windows.hiBy, bound);
      assert(arc >= 0, 'a slot within the bounds is shut out by something placed');
      bound = at(this.net.arcs.to, arc);
    }
    return bound;
  }

  #unplace(activity: number): void {
    const slot = this.#placed[activity];
    if (!slot) return;
    this.#placed[activity] = undefined;
    for (const resource of slot.uses) this.#board.remove(resource, activity);
    for (const { resource } of slot.mode.states) this.#board.remove(resource, activity);
    this.onChange(activity, false);
  }

  /** The windows of a tie from the beginning: pushes, and then what is placed. */
  #workOut(tie: number): void {
    this.windows.copyTimes(this.base, this.#membersOf(tie));
    for (const activity of this.#membersOf(tie)) {
      const slot = this.#placed[activity];
      if (slot) this.#fix(activity, slot);
    }
  }

  #fix(activity: number, { startS, endS }: Slot): void {
    this.windows.fix(startOf(activity), startS);
    this.windows.fix(endOf(activity), endS);
  }

  #membersOf(tie: number): readonly number[] {
    return this.net.ties.members[tie] as readonly number[];
  }
}
