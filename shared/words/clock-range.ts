import type { Instant } from '../kernel/index.ts';
import { clockTime } from './amounts.ts';
import type { Say } from './say.ts';
import { HALF_DAY_MS } from './say-when.ts';

/**
 * From when to when; the half of the day is said once where it is the same.
 * @example clockRange(low, high, { ...say, clock: '12 h' }) //=> '1:05–1:50 pm'
 */
export function clockRange(low: Instant, high: Instant, say: Pick<Say, 'zone' | 'clock'>): string {
  const [from, to] = [clockTime(low, say), clockTime(high, say)];
  if (from === to) return to;
  const half = / [ap]m$/;
  const isSameHalf = half.exec(from)?.[0] === half.exec(to)?.[0];
  return `${isSameHalf ? from.replace(half, '') : from}–${to}`;
}

/**
 * A time or a range as it was said, where there is no doubt without the half of the day.
 * @example nearClock('1:05–1:50 pm', { at: high, now }) //=> '1:05–1:50'
 */
export function nearClock(
  said: string,
  { at, now }: { readonly at: Instant; readonly now: Instant },
): string {
  return Math.abs(at - now) < HALF_DAY_MS ? said.replaceAll(/ [ap]m/g, '') : said;
}
