import type { Instant } from '../kernel/index.ts';
import { unreachable } from '../kernel/index.ts';
import type { HeldBy } from '../view/index.ts';
import { nearClock } from './clock-range.ts';
import { sayBecause } from './reasons.ts';
import type { Language, Say } from './say.ts';
import { textIn } from './say.ts';

type HeldByWords = {
  cooks(dish: string, till: string | null): string;
  runs(task: string, till: string | null): string;
  /** Its time is over. */
  overdue(task: string): string;
  waits(task: string, why: string): string;
  begin(task: string): string;
  readonly mayRunLong: string;
};

const english: HeldByWords = {
  cooks: (dish, till) => `${dish} cooks${till ? ` till ≈\u00a0${till}` : ''}`,
  runs: (task, till) => `still: ${task}${till ? `, till ≈\u00a0${till}` : ''}`,
  overdue: (task) => `not finished: ${task}`,
  waits: (task, why) => `${task}: ${why}`,
  begin: (task) => `not begun: ${task}`,
  mayRunLong: 'its cooks may run long',
};

const spanish: HeldByWords = {
  cooks: (dish, till) => `${dish} se cuece${till ? ` hasta ≈\u00a0${till}` : ''}`,
  runs: (task, till) => `aún: ${task}${till ? `, hasta ≈\u00a0${till}` : ''}`,
  overdue: (task) => `sin acabar: ${task}`,
  waits: (task, why) => `${task}: ${why}`,
  begin: (task) => `sin empezar: ${task}`,
  mayRunLong: 'la carne puede tardar más',
};

const heldByWords: Readonly<Record<Language, HeldByWords>> = { en: english, es: spanish };

/**
 * What holds a late service up, in one short phrase; and the same without its time, for where that
 * has no room.
 * @example sayHeldBy(held, now, say) //=> ['Pork cooks till ≈ 9:28', 'Pork cooks']
 */
export function sayHeldBy(held: HeldBy, now: Instant, say: Say): readonly [string, string] {
  const words = heldByWords[say.language];
  const twice = (said: string) => [said, said] as const;
  switch (held.kind) {
    case 'cooks': {
      const dish = textIn(held.dish, say);
      const till = held.till && nearClock(held.till, now, say);
      return [words.cooks(dish, till), words.cooks(dish, null)];
    }
    case 'runs': {
      const task = textIn(held.task, say);
      if (held.till === null) return twice(words.overdue(task));
      return [words.runs(task, nearClock(held.till, now, say)), words.runs(task, null)];
    }
    case 'waits':
      return twice(words.waits(textIn(held.task, say), sayBecause(held.because, say)));
    case 'begin':
      return twice(words.begin(textIn(held.task, say)));
    case 'may run long':
      return twice(words.mayRunLong);
    default:
      return unreachable(held);
  }
}
