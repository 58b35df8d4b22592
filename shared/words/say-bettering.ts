import { type Seconds, seconds as whole } from '../kernel/index.ts';
import type { Worth } from '../schedule/index.ts';
import { durationWords } from './amounts.ts';
import type { Language } from './say.ts';

type Bettered = {
  readonly before: Worth;
  readonly after: Worth;
  /** No plan can be less ahead of its services than this. */
  readonly aheadLeastS: Seconds | number;
};

/** What looking for a better plan came to, and how far what was found may be from the best. */
export function sayBettering(better: Bettered | null, seconds: number, language: Language): string {
  const words = PHRASES[language];
  if (!better) return words.none(seconds);
  const { before, after, aheadLeastS } = better;
  const part = (100 * (before.aheadS - after.aheadS)) / before.aheadS;
  const over = (100 * (after.aheadS - aheadLeastS)) / after.aheadS;
  const changes = durationWords(whole(before.changesS - after.changesS));
  return [
    words.found(seconds, figure(part, language)),
    ...(before.changesS > after.changesS ? [words.fires(changes)] : []),
    words.over(figure(over, language)),
  ].join(' ');
}

const figure = (percent: number, language: Language) =>
  percent.toLocaleString(language, { minimumFractionDigits: 1, maximumFractionDigits: 1 });

type Phrases = {
  none(seconds: number): string;
  found(seconds: number, percent: string): string;
  fires(less: string): string;
  over(percent: string): string;
};

const PHRASES: Record<Language, Phrases> = {
  en: {
    none: (seconds) => `No better plan was found in ${seconds} s.`,
    found: (seconds, percent) =>
      `In ${seconds} s a plan was found in which food is ready ${percent} % less ahead of time.`,
    fires: (less) => `Its fires take ${less} less to change.`,
    over: (percent) => `No plan can better it by more than ${percent} %.`,
  },
  es: {
    none: (seconds) => `No se encontró un plan mejor en ${seconds} s.`,
    found: (seconds, percent) =>
      `En ${seconds} s se encontró un plan en que la comida espera un ${percent} % menos.`,
    fires: (less) => `Cambiar los fuegos lleva ${less} menos.`,
    over: (percent) => `Ningún plan puede mejorarlo en más de un ${percent} %.`,
  },
};
