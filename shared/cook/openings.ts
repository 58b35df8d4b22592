import type { AirPoint } from './air-curve.ts';

/** An opening of a door: when it began, and how long it was open; seconds. */
export type Opening = { readonly atS: number; readonly openS: number };

/** Air so much below what it was at the reading before it has fallen suddenly (judged). */
const FALL_K = 8;
/** Air that stays down for longer is a fire that fades; a door lets it come up again (judged). */
const DOWN_AT_MOST_S = 1200;
/** Where readings are too far apart to tell. */
const USUAL_OPEN_S = 120;
/** Two reports of one opening lie no further apart. */
const SAME_WITHIN_S = 900;

/** Between readings further apart nobody can tell a door from a fire (judged). */
const UNSEEN_S = 1800;

export type SeenAir = {
  /** The readings that are of a shut smoker. */
  readonly steady: readonly AirPoint[];
  /** What the others tell of its door. */
  readonly openings: readonly Opening[];
};

/** The air fell suddenly at some time between two readings far apart, and nobody knows when. */
export type UnseenFall = { readonly before: AirPoint; readonly after: AirPoint };

/**
 * Reads openings off the air, in order of time: it falls suddenly, and comes up again within twenty
 * minutes; or fell with the last reading, when nobody knows yet.
 */
export function seenIn(log: readonly AirPoint[]): SeenAir {
  const { steady, openings } = readOff(log);
  return { steady, openings };
}

/** The falls of which nothing is known but that they are over: see `UnseenFall`. */
export const unseenFalls = (log: readonly AirPoint[]): readonly UnseenFall[] => readOff(log).falls;

function readOff(log: readonly AirPoint[]): SeenAir & { readonly falls: readonly UnseenFall[] } {
  const steady: AirPoint[] = [];
  const openings: Opening[] = [];
  const falls: UnseenFall[] = [];
  let low: AirPoint[] = [];
  /** It stays down: what seemed a door was the fire. */
  const settle = (last: AirPoint) => {
    const [first] = low;
    if (first && isUnseen(last, first)) falls.push({ before: last, after: first });
    steady.push(...low);
    low = [];
  };
  for (const point of log) {
    const last = steady.at(-1);
    const [first] = low;
    if (last && isLow(point, last)) {
      low.push(point);
      const from = first && isUnseen(last, first) ? first : last;
      if (low.length > 1 && point.atS - from.atS > DOWN_AT_MOST_S) settle(last);
      continue;
    }
    // Up again at once: it was a door, though nobody saw the air before.
    const isDoor = first !== undefined && point.atS - first.atS <= DOWN_AT_MOST_S;
    if (last && first && isUnseen(last, first) && !isDoor) settle(last);
    else if (last && first) openings.push(openingOf(last, low));
    steady.push(point);
    low = [];
  }
  const [last, first] = [steady.at(-1), low[0]];
  if (last && first && isUnseen(last, first)) settle(last);
  else if (last && first) openings.push(openingOf(last, low));
  return { steady, openings, falls };
}

const isUnseen = (last: AirPoint, low: AirPoint) => low.atS - last.atS > UNSEEN_S;

const isLow = ({ tempC }: AirPoint, before: AirPoint) => before.tempC - tempC > FALL_K;

/** It fell from the reading before until it was coldest; of one cold reading nobody knows. */
function openingOf(before: AirPoint, low: readonly AirPoint[]): Opening {
  const coldest = low.reduce((a, b) => (b.tempC < a.tempC ? b : a), before);
  if (low.length < 2) return { atS: coldest.atS - USUAL_OPEN_S, openS: USUAL_OPEN_S };
  return { atS: before.atS, openS: Math.max(60, coldest.atS - before.atS) };
}

/** Those that somebody told, and of those that were read off the air what nobody told. */
export function openingsOf(told: readonly Opening[], seen: readonly Opening[]): Opening[] {
  const isTold = ({ atS }: Opening) =>
    told.some((each) => Math.abs(each.atS - atS) < SAME_WITHIN_S);
  return [...told, ...seen.filter((each) => !isTold(each))].sort((a, b) => a.atS - b.atS);
}
