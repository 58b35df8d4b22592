import type { Logged, Text } from '../view/index.ts';
import { temperature } from './amounts.ts';
import type { CheckPhrases } from './check-phrases.ts';
import type { Say } from './say.ts';
import { textIn } from './say.ts';
import { inEach } from './tongue.ts';

const phrases = inEach('check');

/** The words for what is looked at, in one language. */
export const checkPhrasesOf = ({ language }: Pick<Say, 'language'>): CheckPhrases =>
  phrases[language];

type Said = Extract<Logged, { kind: 'checked' | 'corrected' }>;

/** What was looked at, or done about it, as a sentence of the log. */
export function sayLoggedCheck(said: Said, say: Say): string {
  const words = checkPhrasesOf(say);
  const what = words.kind[said.check];
  const on = textIn(said.on, say);
  if (said.kind === 'corrected') return words.corrected(what, on, words.action[said.action]);
  const temp = said.tempC === null ? null : temperature(said.tempC, say);
  return words.checked(what, on, temp, said.feel && sayFelt(said.feel, say));
}

/** What hand or eye found, in the words of the catalogue where it has them. */
export const sayFelt = ({ words }: { readonly words: Text | null }, say: Pick<Say, 'language'>) =>
  words ? textIn(words, say) : checkPhrasesOf(say).notYet;
