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

/**
 * How much a plan was bettered, in the mean over what was planned anew, and how much better any
 * other could be at the most.
 */
export function sayGap(
  { before, after, aheadLeastS, weight }: Bettered & { readonly weight: number },
  language: Language,
): { readonly line: string; readonly isBest: boolean } {
  const words = PHRASES[language];
  const mean = (sumS: number) => whole(Math.max(0, Math.round(sumS / weight)));
  const [savedS, moreS] = [mean(before.aheadS - after.aheadS), mean(after.aheadS - aheadLeastS)];
  const isBest = moreS < MINUTE_S;
  const saved = savedS < MINUTE_S ? words.sameMean : words.savedMean(durationWords(savedS));
  const more = isBest ? words.best : words.moreMean(durationWords(moreS));
  return { line: `${saved} ${more}`, isBest };
}

/** How much better than a plan any other could be at the most that keeps as much time in hand. */
export function sayBound(
  { after, aheadLeastS, weight }: Bettered & { readonly weight: number },
  language: Language,
): string {
  const words = PHRASES[language];
  const moreS = whole(Math.max(0, Math.round((after.aheadS - aheadLeastS) / weight)));
  return moreS < MINUTE_S ? words.best : words.bound(durationWords(moreS));
}

const MINUTE_S = 60;

type Phrases = {
  none(seconds: number): string;
  found(seconds: number, percent: string): string;
  fires(less: string): string;
  over(percent: string): string;
  savedMean(less: string): string;
  readonly sameMean: string;
  moreMean(less: string): string;
  readonly best: string;
  bound(more: string): string;
};

const PHRASES: Record<Language, Phrases> = {
  en: {
    none: (seconds) => `No better plan was found in ${seconds} s.`,
    found: (seconds, percent) =>
      `In ${seconds} s a plan was found in which food is ready ${percent} % less ahead of time.`,
    fires: (less) => `Its fires take ${less} less to change.`,
    over: (percent) => `No plan can better it by more than ${percent} %.`,
    savedMean: (less) => `A better plan was found: what is planned anew stands ${less} less.`,
    sameMean: 'No plan was found that is better by a minute.',
    moreMean: (less) => `At most ${less} better is possible.`,
    best: 'Proven best, to the minute.',
    bound: (more) =>
      `In no plan with as much time to spare can food stand about by more than ${more} less.`,
  },
  es: {
    none: (seconds) => `No se encontró un plan mejor en ${seconds} s.`,
    found: (seconds, percent) =>
      `En ${seconds} s se encontró un plan en que la comida espera un ${percent} % menos.`,
    fires: (less) => `Cambiar los fuegos lleva ${less} menos.`,
    over: (percent) => `Ningún plan puede mejorarlo en más de un ${percent} %.`,
    savedMean: (less) => `Se encontró un plan mejor: lo planeado de nuevo espera ${less} menos.`,
    sameMean: 'No se encontró un plan mejor en un minuto.',
    moreMean: (less) => `Como mucho se puede mejorar ${less}.`,
    best: 'Es lo mejor, probado al minuto.',
    bound: (more) =>
      `Ningún plan con el mismo margen deja la comida en espera más de ${more} menos.`,
  },
};
