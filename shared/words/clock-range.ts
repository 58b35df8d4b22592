import type { Instant } from '../kernel/index.ts';
import { wallTime } from '../kernel/index.ts';
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
  const isOnce = half.exec(from)?.[0] === half.exec(to)?.[0];
  return `${isOnce ? from.replace(half, '') : from}–${to}`;
}

/**
 * A time to come, without the half of the day where that is the half which is now: any other could
 * be taken for one that has been.
 * @example nearClock(at, now, { ...say, clock: '12 h' }) //=> '1:50'
 */
export const nearClock = (at: Instant, now: Instant, say: Pick<Say, 'zone' | 'clock'>): string =>
  isToCome(at, now) && isSameHalf(at, now, say) ? bare(clockTime(at, say)) : clockTime(at, say);

/**
 * The same of a range, which may have begun: of what ends in another half of the day, the end says
 * so, and the beginning only where it is not in this one.
 * @example nearRange([low, high], now, { ...say, clock: '12 h' }) //=> '11:05–1:50 pm'
 */
export function nearRange(
  [low, high]: readonly [Instant, Instant],
  now: Instant,
  say: Pick<Say, 'zone' | 'clock'>,
): string {
  const said = clockRange(low, high, say);
  if (!isToCome(high, now) || !isSameHalf(low, now, say)) return said;
  if (isSameHalf(high, now, say)) return bare(said);
  return said.replace(/ [ap]m–/, '–');
}

/** A time that is over: within half a day it is in no doubt which half of it is meant. */
export const sinceClock = (at: Instant, now: Instant, say: Pick<Say, 'zone' | 'clock'>): string =>
  now - at < HALF_DAY_MS ? bare(clockTime(at, say)) : clockTime(at, say);

/** Whether two times fall on one half of one day of the kitchen. */
function isSameHalf(one: Instant, other: Instant, { zone }: Pick<Say, 'zone'>): boolean {
  const [a, b] = [wallTime(one, zone), wallTime(other, zone)];
  return a.day === b.day && a.time < NOON === b.time < NOON;
}

const NOON = '12:00';
const MINUTE_MS = 60_000;

const bare = (said: string): string => said.replaceAll(/ [ap]m/g, '');

/** The minute that runs is not over. */
const isToCome = (at: Instant, now: Instant): boolean => at > now - MINUTE_MS;
