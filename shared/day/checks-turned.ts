import type { Instant } from '../kernel/index.ts';
import { minutes } from '../kernel/index.ts';
import { openChecks } from './open-checks.ts';
import type { DayState } from './state.ts';

/** So far ahead a screen is told what it will be asked, so that it can go on alone. */
export const ASKED_AHEAD_S = minutes(120);

/**
 * Whether time alone made something of what is looked at: a check that nobody took has become late,
 * and bars its food, or a screen is to be told of one from now on.
 */
export function checksTurned(state: DayState, was: Instant, now: Instant): boolean {
  const isBetween = (atMs: number) => was < atMs && atMs <= now;
  return openChecks(state).some(
    ({ dueAt, lateAt }) => isBetween(lateAt) || isBetween(dueAt - ASKED_AHEAD_S * 1000),
  );
}
