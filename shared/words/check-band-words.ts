import type { Instant } from '../kernel/index.ts';
import { type CheckKind, type CheckView, howOpen, isTooOld } from '../view/index.ts';
import { clockTime } from './amounts.ts';
import { las } from './at-clock.ts';
import { sayBreach } from './check-refusals.ts';
import { checkPhrasesOf } from './check-words.ts';
import type { Language, Say } from './say.ts';
import { textIn } from './say.ts';

/** The fixed words where something is looked at, on a wall and at the desk. */
export type CheckWords = {
  readonly look: string;
  /** What somebody is to do there, in a verb: for whoever sees a box for the first time. */
  readonly toDo: Readonly<Record<CheckKind, string>>;
  more(count: number): string;
  /** Said of boxes behind one more. */
  readonly toThrowOut: string;
  /** Of food whose time is over, with how many portions are left where that is known. */
  throwOut(portions: number | null): string;
  oldSince(time: string): string;
  by(time: string): string;
  since(time: string): string;
  atLeast(asked: string): string;
  atMost(asked: string): string;
  /** Of a thermometer. */
  offBy(asked: string): string;
  foundBut(found: string, asked: string): string;
  again(time: string): string;
  foundBy(time: string, person: string | null): string;
  readonly whatWasDone: string;
  readonly whoLooked: string;
  withProbe(name: string): string;
  /** Beside a number that was likely read in the other unit. */
  inOther(typed: string, other: string): string;
  itIs(temp: string): string;
  readonly typeIt: string;
  /** Of the temperature of a cook that is done when it feels so. */
  guide(temp: string): string;
  readonly howFelt: string;
  readonly feelIt: string;
  readonly safety: string;
  readonly nothingOpen: string;
  /** Where it is: the name of a station alone may read as a verdict. */
  at(station: string): string;
  readonly stands: { failed: string; missed: string; due: string; later: string };
};

export const checkWords: Readonly<Record<Language, CheckWords>> = {
  en: {
    look: 'Look at',
    toDo: {
      receiving: 'probe what came in',
      'end-temperature': 'probe at the end of the cook',
      'hot-hold': 'probe what is held hot',
      'cold-hold': 'probe what is held cold',
      cooling: 'probe what is cooling',
      reheat: 'probe after reheating',
      'discard-time': 'sell or throw out',
      'out-of-temperature': 'back into the cooler',
      thermometer: 'probe ice water',
      clean: 'wash and sanitize',
    },
    more: (count) => `${count} more`,
    toThrowOut: 'to throw out',
    throwOut: (portions) =>
      `throw out${portions ? ` ${portions} ${portions === 1 ? 'portion' : 'portions'}` : ''}`,
    oldSince: (time) => `too old since ${time}`,
    by: (time) => `by ${time}`,
    since: (time) => `was to be done by ${time}`,
    atLeast: (asked) => `at least ${asked}`,
    atMost: (asked) => `at most ${asked}`,
    offBy: (asked) => `off by ${asked} at most`,
    foundBut: (found, asked) => `${found}, and ${asked} is asked`,
    again: (time) => `again by ${time}`,
    foundBy: (time, person) => `found ${time}${person ? ` by ${person}` : ''}`,
    whatWasDone: 'What was done?',
    whoLooked: 'Who?',
    withProbe: (name) => `with ${name}`,
    inOther: (typed, other) => `${typed}? Read in the other unit it is ${other}.`,
    itIs: (temp) => `It is ${temp}`,
    typeIt: 'Type what it showed first.',
    guide: (temp) => `guide ${temp}`,
    howFelt: 'By hand and eye?',
    feelIt: 'Say first how it is: the number is a guide.',
    safety: 'What is to be looked at',
    at: (station) => `at: ${station}`,
    nothingOpen: 'Nothing is to be looked at in the next two hours.',
    stands: {
      failed: 'Broken, and nobody has said what was done',
      missed: 'Not looked at in time',
      due: 'Due now',
      later: 'Later',
    },
  },
  es: {
    look: 'Revise',
    toDo: {
      receiving: 'sondee lo que llegó',
      'end-temperature': 'sondee al fin de la cocción',
      'hot-hold': 'sondee lo que está caliente',
      'cold-hold': 'sondee lo que está frío',
      cooling: 'sondee lo que se enfría',
      reheat: 'sondee tras recalentar',
      'discard-time': 'venda o tire',
      'out-of-temperature': 'de vuelta al frío',
      thermometer: 'sondee agua con hielo',
      clean: 'lave y desinfecte',
    },
    more: (count) => `${count} más`,
    toThrowOut: 'por tirar',
    throwOut: (portions) =>
      `tire${portions ? ` ${portions} ${portions === 1 ? 'porción' : 'porciones'}` : ''}`,
    oldSince: (time) => `se pasó de tiempo ${time}`,
    by: (time) => `antes de ${las(time)}`,
    since: (time) => `era antes de ${las(time)}`,
    atLeast: (asked) => `mínimo ${asked}`,
    atMost: (asked) => `máximo ${asked}`,
    offBy: (asked) => `desvío máximo ${asked}`,
    foundBut: (found, asked) => `${found}, y se pide ${asked}`,
    again: (time) => `otra vez antes de ${las(time)}`,
    foundBy: (time, person) => `visto ${time}${person ? ` por ${person}` : ''}`,
    whatWasDone: '¿Qué se hizo?',
    whoLooked: '¿Quién?',
    withProbe: (name) => `con ${name}`,
    inOther: (typed, other) => `¿${typed}? Leído en la otra unidad es ${other}.`,
    itIs: (temp) => `Es ${temp}`,
    typeIt: 'Escriba antes lo que marcó.',
    guide: (temp) => `guía ${temp}`,
    howFelt: '¿A mano y a ojo?',
    feelIt: 'Diga antes cómo está: el número es una guía.',
    safety: 'Lo que hay que revisar',
    at: (station) => `en: ${station}`,
    nothingOpen: 'No hay nada que revisar en las próximas dos horas.',
    stands: {
      failed: 'Fuera de límite, y nadie ha dicho qué se hizo',
      missed: 'Sin revisar a tiempo',
      due: 'Para ahora',
      later: 'Después',
    },
  },
};

/** How many more boxes there are, and of how many the food goes. @example '4 more to throw out' */
export function sayMore(count: number, old: number, { language }: Pick<Say, 'language'>): string {
  const { more, toThrowOut } = checkWords[language];
  if (old === 0) return more(count);
  return `${more(count)}${old === count ? '' : `, ${old}`} ${toThrowOut}`;
}

/** What is looked at and on what. @example sayCheck(check, say) //=> 'held hot · Ribs' */
export const sayCheck = ({ on, thing }: Pick<CheckView, 'on' | 'thing'>, say: Say): string =>
  `${checkPhrasesOf(say).kind[on.kind]} · ${textIn(thing, say)}`;

/**
 * What is to be done at a moment, and on what: food whose time is over is no longer offered.
 * @example sayToDo(check, now, say) //=> 'probe what is held hot · Ribs'
 */
export function sayToDo(
  { on, thing, lateAt, old }: Pick<CheckView, 'on' | 'thing' | 'lateAt' | 'old'>,
  now: Instant,
  say: Say,
): string {
  const words = checkWords[say.language];
  const isOld = isTooOld({ on, lateAt }, now);
  const toDo = isOld ? words.throwOut(old?.portions ?? null) : words.toDo[on.kind];
  return `${toDo} · ${textIn(thing, say)}`;
}

/** Till when, or what was found: the second line of a check. */
export function sayCheckTime(check: CheckView, now: Instant, say: Say): string {
  const words = checkWords[say.language];
  const { failed, breach, lateAt, isMending } = check;
  const asked = sayAsked(check, say);
  if (failed) {
    const found = breach?.found ?? words.foundBy(clockTime(failed.at, say), failed.by);
    return asked === null ? found : words.foundBut(found, asked);
  }
  const time = clockTime(lateAt, say);
  if (isTooOld(check, now)) {
    const where = check.old?.where ?? null;
    return [words.oldSince(time), where && textIn(where, say)].filter(Boolean).join(' · ');
  }
  const when = isMending
    ? words.again(time)
    : (howOpen(check, now) === 'missed' ? words.since : words.by)(time);
  return [when, asked].filter(Boolean).join(', ');
}

/** What its limit asks, as the bound that it is; null where it has none. */
export function sayAsked({ on, asked, atLeastC }: CheckView, say: Say): string | null {
  const words = checkWords[say.language];
  if (asked === null) return null;
  if (on.kind === 'thermometer') return words.offBy(asked);
  return atLeastC === null ? words.atMost(asked) : words.atLeast(asked);
}

/** The row that asks for it, with its source. */
export const sayCheckRow = ({ breach }: CheckView, say: Say): string =>
  breach ? sayBreach(breach, say) : '';

/** What is looked at, without on what. @example sayCheckKind('hot-hold', say) //=> 'held hot' */
export const sayCheckKind = (kind: CheckView['on']['kind'], say: Say): string =>
  checkPhrasesOf(say).kind[kind];

/** What may be done about it, as the words on its box. */
export const sayAction = (action: CheckView['allowed'][number], say: Say): string =>
  checkPhrasesOf(say).action[action];
