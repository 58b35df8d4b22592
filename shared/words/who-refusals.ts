import type { WhoRefusal } from '../day/index.ts';
import type { Refusal } from '../view/index.ts';
import type { Say } from './say.ts';
import { type WhoPhrases, whoEnglish, whoSpanish } from './who-phrases.ts';

const phrases: Readonly<Record<Say['language'], WhoPhrases>> = { en: whoEnglish, es: whoSpanish };

/** Whether a refusal is about who is let in, and who may do what. */
export function isWhoRefusal(refusal: Refusal): refusal is WhoRefusal {
  return Object.hasOwn(whoEnglish, refusal.rule);
}

/** Why somebody was not let in or may not do this, as one plain sentence. */
export function sayWhoRefusal(refusal: WhoRefusal, { language }: Pick<Say, 'language'>): string {
  const sentence = phrases[language][refusal.rule] as (refusal: WhoRefusal) => string;
  return sentence(refusal);
}
