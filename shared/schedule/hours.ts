import { at } from './network.ts';

/** Open spans as starts and ends by turns, sorted. */
export type Hours = Int32Array;

/**
 * A gap of up to two hours in somebody's hours is a break, over which work may be put off; a longer
 * one is the end of a shift, past which it is overtime and must be said (common practice, no
 * source).
 */
export const BREAK_MOST_S = 7_200;

/** When both are open. */
export function bothOpen(a: Hours, b: Hours): Hours {
  const spans: number[] = [];
  for (let i = 0, j = 0; i < a.length && j < b.length; ) {
    const start = Math.max(at(a, i), at(b, j));
    const end = Math.min(at(a, i + 1), at(b, j + 1));
    if (start <= end) spans.push(start, end);
    if (at(a, i + 1) < at(b, j + 1)) i += 2;
    else j += 2;
  }
  return Int32Array.from(spans);
}

/**
 * The earliest start from `fromS` on at which so much fits whole into one span, gone to over gaps
 * of at most `gapMostS`; where nothing fits, `fromS` itself, outside the hours. Never earlier for a
 * later `fromS`, so that longest paths may be taken over it (Franck, Neumann and Schwindt, OR
 * Spektrum 23, 2001).
 * @example nextFit(Int32Array.of(0, 60, 90, 200), 50, 20, 30) //=> 90
 */
export function nextFit(hours: Hours, fromS: number, lengthS: number, gapMostS: number): number {
  let span = 0;
  while (span + 2 < hours.length && at(hours, span + 2) <= fromS) span += 2;
  for (let startS = fromS; span < hours.length; span += 2) {
    startS = Math.max(startS, at(hours, span));
    if (startS + lengthS <= at(hours, span + 1)) return startS;
    if (at(hours, span + 2) - at(hours, span + 1) > gapMostS) return fromS;
  }
  return fromS;
}

/** The latest start at which so much fits into the span before the first that opens after `atS`. */
export function lastFit(hours: Hours, atS: number, lengthS: number): number {
  let span = 0;
  while (span + 2 < hours.length && at(hours, span + 2) <= atS) span += 2;
  return at(hours, span + 1) - lengthS;
}

/** By how much `[startS, endS)` lies outside the span it touches first, or all of it. */
export function outsideS(hours: Hours, startS: number, endS: number): number {
  let least = endS - startS;
  for (let span = 0; span < hours.length; span += 2) {
    const before = Math.max(0, at(hours, span) - startS);
    const after = Math.max(0, endS - at(hours, span + 1));
    least = Math.min(least, before + after);
  }
  return least;
}

/** The same hours with the clock turned round. */
export const mirroredHours = (hours: Hours): Hours =>
  hours.map((_, i) => -at(hours, hours.length - 1 - i));
