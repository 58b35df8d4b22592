import type { TimeTwice } from '../plan/index.ts';
import type { Text } from '../view/index.ts';
import { planEditorWords } from './plan-editor-words.ts';
import type { Say } from './say.ts';
import { textIn } from './say.ts';
import { shownClock } from './typed-clock.ts';

const languages = {
  en: {
    twice: (where: string, time: string) =>
      `${where}: the clock goes back that night and shows ${time} twice; the first is taken.`,
  },
  es: {
    twice: (where: string, time: string) =>
      `${where}: esa noche el reloj se atrasa y marca dos veces ${time}; se toma la primera.`,
  },
} as const;

/** Which of two a time of a plan is, on the night the clock goes back. */
export function sayTwice(
  { service, dish, of, time }: TimeTwice,
  nameOf: (dish: string) => Text,
  say: Say,
): string {
  const { language } = say;
  const names = [service, ...(dish === undefined ? [] : [nameOf(dish)])];
  const where = [...names.map((name) => textIn(name, say)), planEditorWords[language][of]];
  return languages[language].twice(where.join(', '), shownClock(time, say));
}
