import { makePlan } from '../../server/adopt.ts';
import { demoDay } from '../../server/demo/index.ts';
import { must, resolveLocal } from '../../shared/kernel/index.ts';
import { check } from '../../shared/schedule/index.ts';

/** Plans in one run; their median is what a plan takes. */
const REPEATS = 5;
const NOON = resolveLocal('2026-11-25', '12:00', 'America/Chicago').at;

/**
 * The demo's two days from its files to a plan: portions to pieces, pieces to batches, batches to
 * tasks, and every task its time, hand and place.
 *
 * - `plan_ms`: the median of a few, the first among them.
 * - `activities`: of the plan, the work of the pit and the washing of tables among them.
 * - `violations`: what the checker, which knows nothing of the planner, finds broken.
 */
export async function bench(): Promise<Record<string, number>> {
  const files = demoDay(NOON, 'America/Chicago');
  const runs = Array.from({ length: REPEATS }, () => {
    const fromMs = performance.now();
    const made = makePlan(files, 1);
    const ms = performance.now() - fromMs;
    if (!made.ok) throw new Error(`the demo's day cannot be planned: ${JSON.stringify(made)}`);
    return { ms, plan: made.plan };
  });
  const inOrder = runs.map(({ ms }) => ms).sort((a, b) => a - b);
  const { built, schedule } = must(runs[0], 'a run').plan;
  return {
    plan_ms: Math.round(must(inOrder[Math.floor(REPEATS / 2)], 'a median')),
    activities: built.problem.activities.length,
    violations: check(built.problem, schedule).length,
  };
}
