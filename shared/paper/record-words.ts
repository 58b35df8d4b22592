import type { Language } from '../words/index.ts';
import { recordEnglish } from './record-english.ts';
import type { RecordWords } from './record-phrases.ts';
import { recordSpanish } from './record-spanish.ts';

/** @example recordWords.es.lots //=> 'Lotes recibidos' */
export const recordWords: Readonly<Record<Language, RecordWords>> = {
  en: recordEnglish,
  es: recordSpanish,
};
