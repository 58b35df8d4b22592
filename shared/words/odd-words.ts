import { kilograms, unreachable } from '../kernel/index.ts';
import type { Odd, Refusal } from '../view/index.ts';
import { weight } from './amounts.ts';
import { deliveryWords } from './delivery-words.ts';
import type { Language, Say } from './say.ts';
import { textIn } from './say.ts';
import { sayDay } from './say-day.ts';

/** What is asked once more of what is typed in, since it is seldom so. */
export type OddWords = {
  readonly itIsSo: string;
  refused(cut: string, odd: string): string;
  heavy(amount: string, counted: string, each: string, usual: string): string;
  /** Of more than a kitchen buys for a week. */
  many(counted: string, listed: number): string;
  /** Of a number so low that it was likely read on the other scale. */
  frozen(temp: string, otherwise: string): string;
  readonly noTemp: string;
  readonly noUseBy: string;
  farUseBy(day: string): string;
  /** Of what came, where nothing did. */
  nothing(cut: string): string;
};

const english: OddWords = {
  itIsSo: 'it is so',
  refused: (cut, odd) =>
    `${cut}: ${odd} Say it again at the desk: tap “it is so”, or put it right.`,
  heavy: (amount, counted, each, usual) =>
    `${amount} for ${counted} is ${each} apiece, where ${usual} is usual`,
  many: (counted, listed) => `${counted} came, where the pull list asks for ${listed}`,
  frozen: (temp, otherwise) => `${temp} is frozen, and the thermometer may have shown ${otherwise}`,
  noTemp: 'nobody measured its temperature',
  noUseBy: 'no use-by day is on it',
  farUseBy: (day) => `its use-by, ${day}, is more than a year off`,
  nothing: (cut) => `nothing came of ${cut}, and what is planned of it cannot be made`,
};

const spanish: OddWords = {
  itIsSo: 'así es',
  refused: (cut, odd) =>
    `${cut}: ${odd} Dígalo otra vez en el escritorio: toque «así es» o corríjalo.`,
  heavy: (amount, counted, each, usual) =>
    `${amount} para ${counted} son ${each} por pieza, y lo normal son ${usual}`,
  many: (counted, listed) => `llegaron ${counted}, y la lista pide ${listed}`,
  frozen: (temp, otherwise) => `${temp} es congelado, y el termómetro quizá marcaba ${otherwise}`,
  noTemp: 'nadie midió su temperatura',
  noUseBy: 'no trae fecha de caducidad',
  farUseBy: (day) => `la caducidad, ${day}, es dentro de más de un año`,
  nothing: (cut) => `no llegó nada de ${cut}, y lo planeado con eso no se puede hacer`,
};

/** @example oddWords.en.itIsSo //=> 'it is so' */
export const oddWords: Readonly<Record<Language, OddWords>> = { en: english, es: spanish };

/** Why what is odd was not kept: what, of which cut, and what to do. */
export const sayOddRefused = (refusal: Refusal, say: Say): string =>
  refusal.rule === 'odd-delivery'
    ? oddWords[say.language].refused(textIn(refusal.cut, say), sayOdd(refusal.odd, say))
    : '';

/** All that is odd, as one sentence. */
export function sayOdd(odd: readonly Odd[], say: Say): string {
  const said = odd.map((each) => sayOne(each, say)).join('; ');
  return said && `${said[0]?.toUpperCase()}${said.slice(1)}.`;
}

function sayOne(odd: Odd, say: Say): string {
  const words = oddWords[say.language];
  const { count } = deliveryWords[say.language];
  switch (odd.kind) {
    case 'weight': {
      const { pieces, weightKg, usualKg } = odd;
      const each = weight(kilograms(weightKg / pieces), say);
      return words.heavy(weight(weightKg, say), count(pieces), each, weight(usualKg, say));
    }
    case 'many':
      return words.many(count(odd.pieces), odd.listed);
    case 'nothing':
      return words.nothing(textIn(odd.cut, say));
    case 'frozen':
      return words.frozen(`${odd.shownF} °F`, `${odd.shownF} °C`);
    case 'no-temp':
      return words.noTemp;
    case 'far-use-by':
      // A day in words has no year, and that is what is odd of it.
      return words.farUseBy(`${sayDay(odd.useBy, say)} ${odd.useBy.slice(0, 4)}`);
    case 'no-use-by':
      return words.noUseBy;
    default:
      return unreachable(odd);
  }
}
