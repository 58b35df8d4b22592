import type { Interface } from './interface.ts';
import { interfaceEnglish } from './interface-english.ts';
import { interfaceSpanish } from './interface-spanish.ts';
import type { Language } from './say.ts';

/** @example ui.es.start //=> 'empezar' */
export const ui: Readonly<Record<Language, Interface>> = {
  en: interfaceEnglish,
  es: interfaceSpanish,
};
