import type { Instant } from '../kernel/index.ts';
import { wallTime } from '../kernel/index.ts';
import { clockTime } from './amounts.ts';
import type { Say } from './say.ts';

/**
 * A time that may be one of another day, before or after, and says so in one word.
 * @example clockOfDay(at, now, say) //=> 'Sat 5:56 pm'
 */
export function clockOfDay(at: Instant, now: Instant, say: Say): string {
  const { zone, language } = say;
  const time = clockTime(at, say);
  if (wallTime(at, zone).day === wallTime(now, zone).day) return time;
  const day = new Intl.DateTimeFormat(language, { weekday: 'short', timeZone: zone }).format(at);
  return `${day} ${time}`;
}
