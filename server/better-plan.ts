import type { AdoptedPlan } from '../shared/day/index.ts';
import {
  type Better,
  type Bettering,
  betterDay,
  bettered,
  type DayBettered,
} from '../shared/plan/index.ts';
import { built } from './built-day.ts';
import { ENGINES, IMPROVING, mustKeep, SEED } from './engine.ts';

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
  if (!better.isBetter) return null;
  const { day, schedule, before, after, aheadLeastS } = better;
  mustKeep(day.problem, schedule);
  return { plan: { ...plan, engine: IMPROVING, built: day, schedule }, before, after, aheadLeastS };
}

/** How far a plan in which nothing has happened yet may be from the best; null: of no plan is. */
export function gapOf(plan: AdoptedPlan): Bettering | null {
  const made = built(plan);
  if (!made.ok) return null;
  const known = new Set(made.day.problem.activities.map(({ id }) => id));
  const placements = plan.schedule.placements.filter(({ activity }) => known.has(activity));
  const { bettering } = bettered(made.day, placements, ENGINES, { seed: plan.seed, steps: 0 });
  return bettering.weight > 0 ? bettering : null;
}

/**
 * Betters a plan of a running day while it is made, in so many steps: the same steps give the same
 * plan. Tells afterwards how far it came; null where nothing was planned anew.
 */
export function betteringBy(
  steps: number,
  shouldStop?: () => boolean,
): {
  readonly better: Better;
  readonly told: () => Bettering | null;
} {
  let told: Bettering | null = null;
  return {
    better(day, schedule) {
      const found = bettered(day, schedule.placements, ENGINES, {
        seed: SEED,
        steps,
        ...(shouldStop && { shouldStop }),
      });
      told = found.bettering.weight > 0 ? found.bettering : null;
      return found.schedule ?? schedule;
    },
    told: () => told,
  };
}
