import type { Board } from './board.ts';
import type { Net, NetClash, NetMode, NetPart, Slot } from './net.ts';
import { at } from './network.ts';

/**
 * A place down in the order of preference weighs as much as this part of a resource's open time.
 */
const LOAD_OF_A_PLACE = 0.25;

/**
 * Which resource may, and which should, fill a need: calendars, capacities, clashes and preference.
 */
export class Places {
  readonly #net: Net;
  readonly #board: Board;
  readonly #placed: readonly (Slot | undefined)[];

  constructor(net: Net, board: Board, placed: readonly (Slot | undefined)[]) {
    this.#net = net;
    this.#board = board;
    this.#placed = placed;
  }

  /** The earliest start at which this resource may have room; `startS` itself if it does. */
  room(
    activity: number,
    mode: NetMode,
    resource: number,
    amount: number,
    startS: number,
    endS: number,
  ): number {
    const openS = mode.anyHour ? startS : this.#board.open(resource, startS, endS, mode.minS);
    if (openS > startS) return openS;
    return Math.max(
      this.#board.room(resource, amount, startS, endS),
      this.#clear(activity, resource, startS, endS),
    );
  }

  /**
   * Resources for all needs of a mode together, or undefined. The order of preference counts, and
   * so does what a resource is loaded with already: the lighter sum of both is tried first.
   */
  choose(
    activity: number,
    mode: NetMode,
    startS: number,
    endS: number,
  ): readonly number[] | undefined {
    const uses: number[] = [];
    return this.#fill(activity, mode, { startS, endS, uses }) ? uses : undefined;
  }

  /** Fills the needs that come after those which are filled. */
  #fill(activity: number, mode: NetMode, filling: Filling): boolean {
    const { startS, endS, uses } = filling;
    const need = uses.length;
    const asked = mode.needs[need];
    if (!asked) return true;
    const tried: number[] = [];
    while (tried.length < asked.resources.length) {
      const resource = this.#lightest(asked.resources, tried);
      tried.push(resource);
      let amount = asked.amount;
      for (let i = 0; i < need; i++) {
        if (uses[i] === resource) amount += mode.needs[i]?.amount ?? 0;
      }
      if (this.room(activity, mode, resource, amount, startS, endS) > startS) continue;
      uses.push(resource);
      if (this.#fill(activity, mode, filling)) return true;
      uses.length = need;
    }
    return false;
  }

  /** Of those not tried, the one with the least sum of its rank and its load. */
  #lightest(resources: readonly number[], tried: readonly number[]): number {
    let best = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let rank = 0; rank < resources.length; rank++) {
      const resource = at(resources, rank);
      if (tried.includes(resource)) continue;
      const weight = rank * LOAD_OF_A_PLACE + this.#board.load(resource);
      if (weight < least) [best, least] = [resource, weight];
    }
    return best;
  }

  /** The earliest start at which nothing placed clashes with this activity in that place. */
  #clear(activity: number, resource: number, startS: number, endS: number): number {
    let possibleS = startS;
    for (const number of this.#net.clashesOf[activity] ?? []) {
      const clash = this.#net.clashes[number];
      if (!clash) continue;
      const asUpper = clash.upper.activity === activity;
      const mine = asUpper ? clash.upper : clash.lower;
      const theirs = asUpper ? clash.lower : clash.upper;
      const other = this.#placed[theirs.activity];
      if (!other?.uses.some((place) => this.#isPair(clash, asUpper, resource, place))) continue;
      const [a, b] = [partTimes(mine, startS, endS), partTimes(theirs, other.startS, other.endS)];
      if (a.beginS < b.finishS && b.beginS < a.finishS) {
        possibleS = Math.max(possibleS, startS + b.finishS - a.beginS);
      }
    }
    return possibleS;
  }

  #isPair(clash: NetClash, asUpper: boolean, mine: number, theirs: number): boolean {
    const [upper, lower] = asUpper ? [mine, theirs] : [theirs, mine];
    return clash.pairs.has(upper * this.#net.resources.length + lower);
  }
}

type Filling = {
  readonly startS: number;
  readonly endS: number;
  /** By need, as far as they are filled. */
  readonly uses: number[];
};

/**
 * When a part begins and finishes; it ends with its activity. One that is left no time still wants
 * its moment: the activity may be drawn out later, and then it must be clear who comes first.
 */
function partTimes({ begin, finish }: NetPart, startS: number, endS: number) {
  const timeOf = (end: 0 | 1) => (end === 0 ? startS : endS);
  const beginS = Math.max(startS, timeOf(begin.end) + begin.offsetS);
  const finishS = Math.min(endS, timeOf(finish.end) + finish.offsetS);
  return { beginS, finishS: Math.max(beginS, finishS) };
}
