import { type CorrectiveAction, checkKey, type Live } from '../day/index.ts';
import type { Celsius, Instant } from '../kernel/index.ts';
import type { CheckView } from './check-view.ts';
import { nameOf } from './logged-who.ts';

/** What was last found or done at a check that is open again, or still. */
export type LastLooked = {
  readonly key: string;
  readonly at: Instant;
  readonly by: string | null;
  readonly tempC: Celsius | null;
  /** What was done, where that is the last that was said; null where somebody looked. */
  readonly action: CorrectiveAction | null;
};

/** Of each of these checks what was said of it last; none of those that nobody has looked at. */
export function lastLooked(live: Live, checks: readonly CheckView[]): LastLooked[] {
  const last = new Map(live.state.checks.map((entry) => [checkKey(entry.on), entry]));
  return checks.flatMap(({ key }): LastLooked[] => {
    const entry = last.get(key);
    if (!entry) return [];
    const by = entry.by && nameOf(live, entry.by);
    return entry.kind === 'checkRecorded'
      ? [{ key, at: entry.at, by, tempC: entry.tempC, action: null }]
      : [{ key, at: entry.at, by, tempC: null, action: entry.action }];
  });
}
