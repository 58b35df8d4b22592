import type { NetResource } from './net.ts';
import { at } from './network.ts';

/** One activity's use of one resource. */
export type Stay = {
  readonly activity: number;
  readonly startS: number;
  readonly endS: number;
  readonly amount: number;
  /** What state it needs; -1 where the resource has none. */
  readonly state: number;
};

/**
 * Who is where when. All questions are asked of an interval and answered with the earliest start at
 * which the answer may be yes: the start asked about if there is room, else a later one, before
 * which there surely is none. An activity without length uses nothing, yet it wants its moment: it
 * may touch others, but not fall within them where there is no room.
 */
export class Board {
  readonly #resources: readonly NetResource[];
  readonly #stays: Stay[][];
  /** Seconds of use, each counted by its part of the capacity. */
  readonly #busyS: Float64Array;

  constructor(resources: readonly NetResource[]) {
    this.#resources = resources;
    this.#stays = resources.map(() => []);
    this.#busyS = new Float64Array(resources.length);
  }

  add(resource: number, stay: Stay): void {
    this.#row(resource).push(stay);
    this.#count(resource, stay, 1);
  }

  /** Takes all stays of an activity off a resource. */
  remove(resource: number, activity: number): void {
    const row = this.#row(resource);
    for (let i = row.length - 1; i >= 0; i--) {
      const stay = row[i];
      if (stay?.activity !== activity) continue;
      row.splice(i, 1);
      this.#count(resource, stay, -1);
    }
  }

  /** The part of its open time for which a resource is taken. */
  load(resource: number): number {
    return at(this.#busyS, resource) / this.#resource(resource).openS;
  }

  /** Room for so much in a capacity. */
  room(resource: number, amount: number, startS: number, endS: number): number {
    let possibleS = startS;
    const { capacity } = this.#resource(resource);
    // Two needs of one activity may ask for more together than an empty place has.
    if (amount > capacity) return Number.POSITIVE_INFINITY;
    const row = this.#row(resource);
    let together = amount;
    for (const stay of row) if (meets(stay, startS, endS)) together += stay.amount;
    if (together <= capacity) return startS;
    for (const stay of row) {
      if (!meets(stay, startS, endS)) continue;
      const momentS = Math.max(startS, stay.startS);
      const passing = startS === endS || stay.startS === stay.endS;
      const there = coveringAt(row, momentS, passing);
      if (amount + there.used + (isMoment(stay) ? stay.amount : 0) <= capacity) continue;
      possibleS = Math.max(possibleS, isMoment(stay) ? momentS : there.firstEndS);
    }
    return possibleS;
  }

  /**
   * An open span that holds the whole interval, which may shrink to `minS`; past the last, never.
   */
  open(resource: number, startS: number, endS: number, minS: number): number {
    const { spans } = this.#resource(resource);
    if (!spans) return startS;
    for (let i = 0; i < spans.length; i += 2) {
      const from = Math.max(startS, at(spans, i));
      if (Math.max(endS, from + minS) <= at(spans, i + 1)) return from;
    }
    return Number.POSITIVE_INFINITY;
  }

  /** A state resource in that state, with time to change to it and away from it. */
  inState(resource: number, state: number, startS: number, endS: number): number {
    const { changeS, states } = this.#resource(resource);
    let possibleS = startS;
    for (const stay of this.#row(resource)) {
      if (stay.state === state) continue;
      const fromIt = stay.endS + at(changeS, stay.state * states + state);
      const toIt = at(changeS, state * states + stay.state);
      if (fromIt > startS && endS + toIt > stay.startS) possibleS = Math.max(possibleS, fromIt);
    }
    return possibleS;
  }

  /** The seconds that a state resource takes to change, all in all. */
  changesS(resource: number): number {
    const { changeS, states } = this.#resource(resource);
    const inTurn = this.#row(resource).toSorted((a, b) => a.startS - b.startS || a.endS - b.endS);
    return inTurn.reduce((sum, { state }, i) => {
      const before = inTurn[i - 1];
      if (!before || before.state === state) return sum;
      return sum + at(changeS, before.state * states + state);
    }, 0);
  }

  /** Who is met on any of these resources. */
  blockers(resources: readonly number[], startS: number, endS: number): number[] {
    const met = resources.flatMap((resource) =>
      this.#row(resource).filter((stay) => meets(stay, startS, endS)),
    );
    return [...new Set(met.map(({ activity }) => activity))];
  }

  /** The first moment after `startS` at which any of these resources may become free. */
  nextChange(resources: Iterable<number>, startS: number): number {
    let next = Number.POSITIVE_INFINITY;
    for (const resource of resources) {
      for (const { endS } of this.#row(resource)) {
        if (endS > startS && endS < next) next = endS;
      }
      const { spans } = this.#resource(resource);
      for (let i = 0; spans && i < spans.length; i += 2) {
        if (at(spans, i) > startS && at(spans, i) < next) next = at(spans, i);
      }
    }
    return next;
  }

  #row(resource: number): Stay[] {
    return this.#stays[resource] as Stay[];
  }

  #resource(resource: number): NetResource {
    return this.#resources[resource] as NetResource;
  }

  #count(resource: number, { startS, endS, amount }: Stay, sign: 1 | -1): void {
    const part = amount / Math.max(1, this.#resource(resource).capacity);
    this.#busyS[resource] = at(this.#busyS, resource) + sign * part * (endS - startS);
  }
}

const meets = (stay: Stay, startS: number, endS: number) =>
  stay.startS < endS && startS < stay.endS;

const isMoment = ({ startS, endS }: Stay) => startS === endS;

/**
 * What is used at a moment, and when the first of it is given back; in `passing`, starts do not
 * count.
 */
function coveringAt(row: readonly Stay[], momentS: number, passing: boolean) {
  let used = 0;
  let firstEndS = Number.POSITIVE_INFINITY;
  for (const stay of row) {
    const covers = passing ? stay.startS < momentS : stay.startS <= momentS;
    if (!covers || momentS >= stay.endS) continue;
    used += stay.amount;
    firstEndS = Math.min(firstEndS, stay.endS);
  }
  return { used, firstEndS };
}
