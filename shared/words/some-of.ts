import type { Say } from './say.ts';

/** More names than these in one sentence are counted. */
const MOST_NAMES = 4;

const more: Readonly<Record<Say['language'], (count: number) => string>> = {
  en: (count) => `${count} more`,
  es: (count) => `${count} más`,
};

/** @example someOf(['a', 'b', 'c', 'd', 'e', 'f'], say) //=> 'a, b, c, d, 2 more' */
export function someOf(names: readonly string[], { language }: Pick<Say, 'language'>): string {
  const rest = names.length - MOST_NAMES;
  return [...names.slice(0, MOST_NAMES), ...(rest > 0 ? [more[language](rest)] : [])].join(', ');
}
