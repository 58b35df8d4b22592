import type { Instant } from '../kernel/index.ts';
import { wallTime } from '../kernel/index.ts';
import { clockTime } from './amounts.ts';
import type { Say } from './say.ts';

/** A time that lies no further off is meant in the half of the day that is next. */
export const HALF_DAY_MS = 12 * 3_600_000;

/**
 * A moment that has been, on the kitchen's clock; with its day where that is another one.
 * @example sayWhen(at, now, say) //=> 'Fri, Nov 27, 10:42'
 */
export function sayWhen(at: Instant, now: Instant, say: Say): string {
  const { zone, language } = say;
  const time = clockTime(at, say);
  if (wallTime(at, zone).day === wallTime(now, zone).day) return time;
  const parts = { weekday: 'short', month: 'short', day: 'numeric', timeZone: zone } as const;
  return `${new Intl.DateTimeFormat(language, parts).format(at)}, ${time}`;
}

/**
 * The day of a time to come that the clock alone would leave in doubt: one of another day, more
 * than half a day off. Empty where there is no doubt.
 * @example sayDayAhead(at, now, say) //=> 'Fri'
 */
export function sayDayAhead(
  at: Instant,
  now: Instant,
  { zone, language }: Pick<Say, 'zone' | 'language'>,
): string {
  const isFar = at - now > HALF_DAY_MS;
  if (!isFar || wallTime(at, zone).day === wallTime(now, zone).day) return '';
  return new Intl.DateTimeFormat(language, { weekday: 'short', timeZone: zone }).format(at);
}

/** A time to come, with its day where that is in doubt. @example 'Fri 9:48 am' */
export const clockAhead = (at: Instant, now: Instant, say: Say): string =>
  [sayDayAhead(at, now, say), clockTime(at, say)].filter(Boolean).join(' ');
