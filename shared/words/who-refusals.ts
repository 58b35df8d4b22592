import type { WhoRefusal } from '../day/index.ts';
import type { Refusal } from '../view/index.ts';
import type { Say } from './say.ts';
import { inEach } from './tongue.ts';

const phrases = inEach('who');

/** Whether a refusal is about who is let in, and who may do what. */
export function isWhoRefusal(refusal: Refusal, say: Pick<Say, 'language'>): refusal is WhoRefusal {
  return Object.hasOwn(phrases[say.language], refusal.rule);
}

/** Why somebody was not let in or may not do this, as one plain sentence. */
export function sayWhoRefusal(refusal: WhoRefusal, { language }: Pick<Say, 'language'>): string {
  const sentence = phrases[language][refusal.rule] as (refusal: WhoRefusal) => string;
  return sentence(refusal);
}
