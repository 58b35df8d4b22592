import { type Instant, instant } from '../kernel/index.ts';
import { type CheckView, checksDue } from '../view/index.ts';
import { clockTime } from './amounts.ts';
import type { Say } from './say.ts';
import { clockAhead } from './say-when.ts';
import { ui } from './ui.ts';

type Open = {
  /** When the next task can start; null where there is none. */
  readonly nextAt: Instant | null;
  readonly checks: readonly CheckView[];
  /** A fire is to be seen to, or its air to be read. */
  readonly isFireCalled: boolean;
};

/** Said in the place of lines where there are none: not that all is done while something is not. */
export function sayNothingToDo(
  { nextAt, checks, isFireCalled }: Open,
  now: Instant,
  say: Say,
): string {
  const words = ui[say.language];
  const isLookedFor = isFireCalled || checksDue(checks, now).length > 0;
  if (nextAt !== null) {
    const at = clockAhead(nextAt, now, say);
    return isLookedFor ? words.onlyLookUntil(at) : words.nothingUntil(at);
  }
  if (isLookedFor) return words.onlyLook;
  if (checks.length === 0) return words.nothingLeft;
  const next = instant(Math.min(...checks.map(({ dueAt }) => dueAt)));
  return words.lookNext(clockTime(next, say));
}
