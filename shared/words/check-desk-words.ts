import type { CheckView, howOpen, LastLooked } from '../view/index.ts';
import { clockTime, temperature } from './amounts.ts';
import { sayAction } from './check-band-words.ts';
import type { Language, Say } from './say.ts';

/** The words of the desk's list of checks, beside those that the walls have too. */
export type CheckDeskWords = {
  readonly nothingDue: string;
  /** On a row that may be done. */
  readonly writeIt: string;
  readonly notYet: string;
  /** What was found, when and by whom; and that it was good. */
  good(found: string): string;
  last(what: string): string;
  readonly nothingOpen: string;
  /** Where it is: the name of a station alone may read as a verdict. */
  at(station: string): string;
  readonly stands: Readonly<Record<ReturnType<typeof howOpen>, string>>;
};

/** @example checkDeskWords.en.nothingDue //=> 'Nothing due now.' */
export const checkDeskWords: Readonly<Record<Language, CheckDeskWords>> = {
  en: {
    nothingDue: 'Nothing due now.',
    writeIt: 'write it down',
    notYet: 'not looked at yet',
    good: (found) => `good: ${found}`,
    last: (what) => `last ${what}`,
    nothingOpen: 'Nothing is to be looked at in the next two hours.',
    at: (station) => `at: ${station}`,
    stands: {
      failed: 'Broken, and nobody has said what was done',
      missed: 'Not looked at in time',
      due: 'Due now',
      later: 'Later',
    },
  },
  es: {
    nothingDue: 'Nada pendiente ahora.',
    writeIt: 'anotar',
    notYet: 'aún sin revisar',
    good: (found) => `bien: ${found}`,
    last: (what) => `última vez ${what}`,
    nothingOpen: 'No hay nada que revisar en las próximas dos horas.',
    at: (station) => `en: ${station}`,
    stands: {
      failed: 'Fuera de límite, y nadie ha dicho qué se hizo',
      missed: 'Sin revisar a tiempo',
      due: 'Para ahora',
      later: 'Después',
    },
  },
};

/**
 * What was found or done there last, and whether that was good; a failing one is said in its own
 * line, and at what only gets too old nobody looks.
 * @example sayLast(check, last, say) //=> 'last good: 146 °F, 8:50 am, Rosa'
 */
export function sayLast(
  { failed, on }: Pick<CheckView, 'failed' | 'on'>,
  last: LastLooked | null,
  say: Say,
): string {
  const words = checkDeskWords[say.language];
  if (failed || on.kind === 'discard-time') return '';
  if (last === null) return words.notYet;
  const { at, by, tempC, action } = last;
  const done = action && sayAction(action, say);
  const found = [done, tempC !== null && temperature(tempC, say), clockTime(at, say), by];
  const said = found.filter(Boolean).join(', ');
  return words.last(action ? said : words.good(said));
}
