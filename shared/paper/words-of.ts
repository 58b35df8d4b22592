import type { Language } from '../words/index.ts';
import { english } from './english.ts';
import type { PaperWords } from './phrases.ts';
import { spanish } from './spanish.ts';

const languages: Readonly<Record<Language, PaperWords>> = { en: english, es: spanish };

/**
 * The fixed words of the sheets in the reader's language.
 * @example paperWords('es').page //=> 'página'
 */
export function paperWords(language: Language): PaperWords {
  return languages[language];
}
