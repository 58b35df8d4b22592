import type { LocalDay } from '../kernel/index.ts';
import { isLocalDay, resolveLocal } from '../kernel/index.ts';
import type { Say } from './say.ts';

/**
 * A local day as the desk has it everywhere; what is no day stays as it is.
 * @example sayDay('2026-11-25', { language: 'en' }) //=> 'Wed, Nov 25'
 */
export function sayDay(day: LocalDay | string, { language }: Pick<Say, 'language'>): string {
  if (!isLocalDay(day)) return day;
  const parts = { weekday: 'short', month: 'short', day: 'numeric', timeZone: 'UTC' } as const;
  return new Intl.DateTimeFormat(language, parts).format(resolveLocal(day, '12:00', 'UTC').at);
}
