import type { LimitsHeld } from '../view/index.ts';
import { sayLimits, sayWhyLimits } from './limits-words.ts';
import type { Language, Say } from './say.ts';

type Words = {
  held(name: string): string;
  changed(why: string): string;
};

const words: Readonly<Record<Language, Words>> = {
  en: {
    held: (name) => `Limits of this day: ${name}.`,
    changed: (why) => `Changed from what was delivered: ${why}.`,
  },
  es: {
    held: (name) => `Límites de este día: ${name}.`,
    changed: (why) => `No son los que venían: ${why}.`,
  },
};

/** What a day is held to, and why it is other than delivered, one sentence each. */
export function sayLimitsHeld(limits: LimitsHeld, { language }: Pick<Say, 'language'>): string[] {
  const { held, changed } = words[language];
  const why = sayWhyLimits(limits.changes);
  return [held(sayLimits(limits)), ...(why === '' ? [] : [changed(why)])];
}
