import { openLive } from '../../shared/day/index.ts';
import { makePlan, revisePlan } from '../adopt.ts';
import { type ConflictSaid, whatCannotBe } from '../why-not-planned.ts';
import type { DraftAsk } from './draft.ts';

/** Nobody waits longer for it; what was left out by then is left out. */
const MOST_MS = 20_000;
/** A list that nobody can read tells nobody anything. */
const FEW = 12;

/** Which few things of a plan cannot all be; null where it fits, and where it is not found out. */
export function conflictIn(
  { files, state, now, language }: DraftAsk,
  nowMs = () => performance.now(),
  shouldStop = () => false,
): ConflictSaid | null {
  const endMs = nowMs() + MOST_MS;
  const live = state?.plan ? openLive(state, now) : null;
  const trial = { isTrial: true };
  const made = live ? revisePlan(files, live, trial) : makePlan(files, 1, trial);
  if (made.ok || made.why === 'refused' || shouldStop()) return null;
  const isOver = () => nowMs() >= endMs || shouldStop();
  const found = whatCannotBe(made, files.kitchen, language, isOver);
  if (!found) return null;
  const { demands, chains, isSmallest } = found.conflicting;
  if (isSmallest && demands.length <= FEW) return found.said(false);
  return chains.length > 0 && chains.length <= FEW ? found.said(true) : null;
}
