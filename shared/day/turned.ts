import type { Instant } from '../kernel/index.ts';
import { minutes } from '../kernel/index.ts';
import { openChecks } from './open-checks.ts';
import type { DayState } from './state.ts';

/** So far ahead a screen is told what it will be asked, so that it can go on alone. */
export const ASKED_AHEAD_S = minutes(120);

/**
 * Whether time alone changed what is shown: a clock reads another minute, a check that nobody took
 * has become late, and bars its food, or a screen is to be told of one from now on.
 */
export function hasTurned(state: DayState, was: Instant, now: Instant): boolean {
  if (Math.floor(now / 60_000) > Math.floor(was / 60_000)) return true;
  const isBetween = (atMs: number) => was < atMs && atMs <= now;
  return openChecks(state).some(
    ({ dueAt, lateAt }) => isBetween(lateAt) || isBetween(dueAt - ASKED_AHEAD_S * 1000),
  );
}
