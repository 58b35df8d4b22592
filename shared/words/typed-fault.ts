import { unreachable } from '../kernel/index.ts';
import type { Language, Say } from './say.ts';
import { shownClock } from './typed-clock.ts';

/** What a field of a plan takes, where something else was typed into it. */
export type Wanted =
  | { readonly kind: 'clock' }
  | { readonly kind: 'day' }
  | { readonly kind: 'count'; readonly least: number }
  | { readonly kind: 'some' }
  | { readonly kind: 'once' }
  /** A time that comes on the night the clock goes forward, such as these. */
  | { readonly kind: 'not-skipped'; readonly such: readonly string[] }
  | { readonly kind: 'one-of'; readonly words: string }
  /** As the file's reader has it, for what only a file can have wrong. */
  | { readonly kind: 'as-read'; readonly words: string };

/** What is wrong with one field of a plan that somebody typed. */
export type TypedFault = {
  /** The field by its names on the page. */
  readonly where: string;
  /** As it was typed; empty where nothing was. */
  readonly found: string;
  readonly wanted: Wanted;
};

type Phrases = {
  fault(where: string, found: string, wanted: string): string;
  readonly nothing: string;
  clock(example: string, next: string): string;
  readonly day: string;
  count(least: number): string;
  readonly some: string;
  readonly once: string;
  oneOf(words: string): string;
  notSkipped(such: readonly string[]): string;
};

const languages: Readonly<Record<Language, Phrases>> = {
  en: {
    fault: (where, found, wanted) => `${where}: found ${found}; allowed: ${wanted}.`,
    nothing: 'nothing',
    clock: (example, next) => `a time such as ${example}; ${next} is the day after`,
    day: 'a day of the calendar',
    count: (least) => `a whole number, ${least} or more`,
    some: 'at least one of it',
    once: 'each dish once in a service',
    oneOf: (words) => `one of: ${words}`,
    notSkipped: (such) =>
      `a time that the clock does not skip that night, such as ${such.join(' or ')}`,
  },
  es: {
    fault: (where, found, wanted) => `${where}: se encontró ${found}; se admite: ${wanted}.`,
    nothing: 'nada',
    clock: (example, next) => `una hora como ${example}; ${next} es del día siguiente`,
    day: 'un día del calendario',
    count: (least) => `un número entero, ${least} o más`,
    some: 'al menos uno',
    once: 'cada platillo una vez en un servicio',
    oneOf: (words) => `uno de: ${words}`,
    notSkipped: (such) => `una hora que el reloj no se salte esa noche, como ${such.join(' o ')}`,
  },
};

/** What is wrong with a field and what it takes, in one sentence. */
export function sayTypedFault({ where, found, wanted }: TypedFault, say: Say): string {
  const words = languages[say.language];
  return words.fault(where, found === '' ? words.nothing : found, sayWanted(wanted, words, say));
}

function sayWanted(wanted: Wanted, words: Phrases, say: Say): string {
  switch (wanted.kind) {
    case 'clock':
      return words.clock(shownClock('17:00', say), shownClock('25:00', say));
    case 'count':
      return words.count(wanted.least);
    case 'one-of':
      return words.oneOf(wanted.words);
    case 'not-skipped':
      return words.notSkipped(wanted.such.map((time) => shownClock(time, say)));
    case 'as-read':
      return wanted.words;
    case 'day':
    case 'some':
    case 'once':
      return words[wanted.kind];
    default:
      return unreachable(wanted);
  }
}
