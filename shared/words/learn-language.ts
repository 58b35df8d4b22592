import type { Language } from './say.ts';
import { learn } from './tongue.ts';

/** Fetches the words of one language, for a screen that shows no other. */
export async function learnLanguage(language: Language): Promise<void> {
  if (language === 'es') learn('es', (await import('./spanish-tongue.ts')).spanishTongue);
  else learn('en', (await import('./english-tongue.ts')).englishTongue);
}
