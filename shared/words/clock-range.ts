import type { Instant } from '../kernel/index.ts';
import { clockTime } from './amounts.ts';
import type { Say } from './say.ts';

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
