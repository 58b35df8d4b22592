import type { Text } from '../view/index.ts';

export type Language = 'en' | 'es';

/** Each by its own name. */
export const LANGUAGES: Readonly<Record<Language, string>> = { en: 'English', es: 'Español' };

/** How one reader wants things said: the kitchen's habits and the person's language. */
export type Say = {
  readonly language: Language;
  readonly zone: string;
  readonly clock: '12 h' | '24 h';
  readonly temperature: '°F' | '°C';
  readonly weight: 'lb' | 'kg';
};

/** A text in the reader's language, or in English where it has not been translated. */
export function textIn(text: Text, say: Pick<Say, 'language'>): string {
  return text[say.language] ?? text.en;
}
