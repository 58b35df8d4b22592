import type { Instant } from '../kernel/index.ts';
import type { Say } from '../words/index.ts';

type Reader = Pick<Say, 'language' | 'zone'>;

/**
 * The local day of an instant in full.
 * @example fullDay(at, say) //=> 'Wednesday, November 25, 2026'
 */
export function fullDay(at: Instant, { language, zone }: Reader): string {
  return sentenceCase(
    new Intl.DateTimeFormat(language, { dateStyle: 'full', timeZone: zone }).format(at),
  );
}

/**
 * The same without its year, for a heading.
 * @example shortDay(at, say) //=> 'Wednesday, November 25'
 */
export function shortDay(at: Instant, { language, zone }: Reader): string {
  const parts = { weekday: 'long', month: 'long', day: 'numeric', timeZone: zone } as const;
  return sentenceCase(new Intl.DateTimeFormat(language, parts).format(at));
}

const sentenceCase = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
