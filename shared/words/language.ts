import type { Phrases } from './phrases.ts';
import type { Say } from './say.ts';
import { inEach } from './tongue.ts';

const languages = inEach('phrases');

/** The sentences of the reader's language. */
export function phrasesOf(say: Pick<Say, 'language'>): Phrases {
  return languages[say.language];
}
