import type { Instant } from '../kernel/index.ts';
import { wallTime } from '../kernel/index.ts';
import { clockTime } from './amounts.ts';
import type { Say } from './say.ts';

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
