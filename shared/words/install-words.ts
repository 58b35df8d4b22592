import { installEnglish } from './install-english.ts';
import type { InstallWords } from './install-phrases.ts';
import { installSpanish } from './install-spanish.ts';
import type { Language } from './say.ts';

export const installWords: Readonly<Record<Language, InstallWords>> = {
  en: installEnglish,
  es: installSpanish,
};
