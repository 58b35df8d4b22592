import type { AdoptedPlan } from '../shared/day/index.ts';
import { betterDay, type DayBettered } from '../shared/plan/index.ts';
import { chain, check, construct, improve } from '../shared/schedule/index.ts';
import { built, mustKeep } from './adopt.ts';

/** Written into a plan that was improved. */
const ENGINE = 'improving 1';
const ENGINES = { planner: construct, improve, chain, check };
/** So many steps at the most, whatever time there is. */
const STEPS_MOST = 1_000_000;

export type Bettered = Pick<DayBettered, 'before' | 'after' | 'aheadLeastS'> & {
  readonly plan: AdoptedPlan;
};

/**
 * A better plan for the same files as a plan in which nothing has happened yet; null where none was
 * found before it was told to stop.
 */
export function betterPlan(plan: AdoptedPlan, shouldStop: () => boolean): Bettered | null {
  const made = built(plan);
  if (!made.ok) return null;
  const now = { ok: true, day: plan.built, schedule: plan.schedule } as const;
  const options = { seed: plan.seed, steps: STEPS_MOST, shouldStop };
  const better = betterDay(made.day, now, ENGINES, options);
  if (!better) return null;
  const { day, schedule, before, after, aheadLeastS } = better;
  mustKeep(day.problem, schedule);
  return { plan: { ...plan, engine: ENGINE, built: day, schedule }, before, after, aheadLeastS };
}
