import type { Kilograms } from '../kernel/index.ts';
import { kilograms } from '../kernel/index.ts';
import { weight } from './amounts.ts';
import { deliveryWords } from './delivery-words.ts';
import type { Language, Say } from './say.ts';

/** What is asked once more of what is typed in, since it is seldom so. */
export type OddWords = {
  readonly itIsSo: string;
  heavy(amount: string, counted: string, each: string, usual: string): string;
  readonly noTemp: string;
  readonly noUseBy: string;
  /** Of what came, where nothing did. */
  nothing(cut: string): string;
};

const english: OddWords = {
  itIsSo: 'it is so',
  heavy: (amount, counted, each, usual) =>
    `${amount} for ${counted} is ${each} apiece, where ${usual} is usual`,
  noTemp: 'nobody measured its temperature',
  noUseBy: 'no use-by day is on it',
  nothing: (cut) => `nothing came of ${cut}, and what is planned of it cannot be made`,
};

const spanish: OddWords = {
  itIsSo: 'así es',
  heavy: (amount, counted, each, usual) =>
    `${amount} para ${counted} son ${each} por pieza, y lo normal son ${usual}`,
  noTemp: 'nadie midió su temperatura',
  noUseBy: 'no trae fecha de caducidad',
  nothing: (cut) => `no llegó nada de ${cut}, y lo planeado con eso no se puede hacer`,
};

/** @example oddWords.en.itIsSo //=> 'it is so' */
export const oddWords: Readonly<Record<Language, OddWords>> = { en: english, es: spanish };

/** A piece that is out by more than this many times was mistyped sooner than weighed (judged). */
const MOST_TIMES = 3;

type Amount = { readonly pieces: number; readonly weightKg: Kilograms };

/** What is odd about so many pieces of such a weight; null where that may well be. */
export function sayOddWeight({ pieces, weightKg }: Amount, usualKg: number, say: Say) {
  if (pieces === 0 || usualKg <= 0) return null;
  const eachKg = weightKg / pieces;
  if (eachKg <= usualKg * MOST_TIMES && eachKg >= usualKg / MOST_TIMES) return null;
  const [all, each, usual] = [weightKg, eachKg, usualKg].map((kg) => weight(kilograms(kg), say));
  const counted = deliveryWords[say.language].count(pieces);
  return oddWords[say.language].heavy(`${all}`, counted, `${each}`, `${usual}`);
}

/** All that is odd, as one sentence; null where nothing is. */
export function sayOdd(what: readonly (string | null)[]): string | null {
  const said = what.filter((each) => each !== null).join('; ');
  return said === '' ? null : `${said[0]?.toUpperCase()}${said.slice(1)}.`;
}
