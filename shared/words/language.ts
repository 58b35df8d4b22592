import { english } from './english.ts';
import type { Phrases } from './phrases.ts';
import type { Say } from './say.ts';
import { spanish } from './spanish.ts';

const languages = { en: english, es: spanish } as const satisfies Record<string, Phrases>;

/** The sentences of the reader's language. */
export function phrasesOf(say: Pick<Say, 'language'>): Phrases {
  return languages[say.language];
}
