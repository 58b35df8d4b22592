import type { Celsius, Kilograms } from '../kernel/index.ts';
import { kilograms, toFahrenheit } from '../kernel/index.ts';
import { weight } from './amounts.ts';
import { deliveryWords } from './delivery-words.ts';
import type { Language, Say } from './say.ts';

/** What is asked once more of what is typed in, since it is seldom so. */
export type OddWords = {
  readonly itIsSo: string;
  heavy(amount: string, counted: string, each: string, usual: string): string;
  /** Of a number so low that it was likely read on the other scale. */
  frozen(temp: string, otherwise: string): string;
  readonly noTemp: string;
  readonly noUseBy: string;
  /** Of what came, where nothing did. */
  nothing(cut: string): string;
};

const english: OddWords = {
  itIsSo: 'it is so',
  heavy: (amount, counted, each, usual) =>
    `${amount} for ${counted} is ${each} apiece, where ${usual} is usual`,
  frozen: (temp, otherwise) => `${temp} is frozen, and the thermometer may have shown ${otherwise}`,
  noTemp: 'nobody measured its temperature',
  noUseBy: 'no use-by day is on it',
  nothing: (cut) => `nothing came of ${cut}, and what is planned of it cannot be made`,
};

const spanish: OddWords = {
  itIsSo: 'así es',
  heavy: (amount, counted, each, usual) =>
    `${amount} para ${counted} son ${each} por pieza, y lo normal son ${usual}`,
  frozen: (temp, otherwise) => `${temp} es congelado, y el termómetro quizá marcaba ${otherwise}`,
  noTemp: 'nadie midió su temperatura',
  noUseBy: 'no trae fecha de caducidad',
  nothing: (cut) => `no llegó nada de ${cut}, y lo planeado con eso no se puede hacer`,
};

/** @example oddWords.en.itIsSo //=> 'it is so' */
export const oddWords: Readonly<Record<Language, OddWords>> = { en: english, es: spanish };

/** Fresh meat comes no colder (judged). */
const FROZEN_C = -2;
/** What comes cold comes at this or below: Food Code, 3-202.11(A), 2009 text. */
const RECEIVED_AT_MOST_C = 5;

/**
 * What is odd about a number of degrees Fahrenheit that is below freezing: 15 read off a
 * thermometer that shows Celsius is meat that came too warm, and would go in as good. What is cold
 * enough on either scale is not asked about.
 */
export function sayOddTemp(tempC: Celsius | null, say: Say): string | null {
  if (tempC === null || say.temperature !== '°F' || tempC >= FROZEN_C) return null;
  const shown = Math.round(toFahrenheit(tempC));
  if (shown <= RECEIVED_AT_MOST_C) return null;
  return oddWords[say.language].frozen(`${shown} °F`, `${shown} °C`);
}

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
