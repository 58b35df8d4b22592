import type { Instant } from '../kernel/index.ts';
import { type CheckView, howOpen, isTooOld } from '../view/index.ts';
import { clockTime } from './amounts.ts';
import { sayBreach } from './check-refusals.ts';
import { checkPhrasesOf } from './check-words.ts';
import type { Say } from './say.ts';
import { textIn } from './say.ts';
import { inEach } from './tongue.ts';

/** @example checkWords.es.look //=> 'Revise' */
export const checkWords = inEach('band');

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
