import { must, seconds } from '../kernel/index.ts';
import { chain } from './chain.ts';
import type { Placement, Planned, Planner, Problem } from './model.ts';
import type { Slot } from './net.ts';
import { refuse } from './refuse.ts';
import { search } from './search.ts';
import { validate } from './validate.ts';

const ATTEMPTS = 16;

/**
 * Plans backward from the goals, each activity as late as it can be, so that food is fresh; what no
 * goal waits for is placed as early as it can be. A few seeded restarts follow if an order of
 * placing leads into a corner. The answer is a schedule that keeps everything, or a refusal.
 */
export const construct: Planner = (problem, { seed, attempts = ATTEMPTS }) => {
  const conflicts = validate(problem);
  if (conflicts.length > 0) return { ok: false, conflicts };
  const lateS = problem.goals.map(() => 0);
  const found = search(problem, { seed, lateS, attempts });
  if (found.ok) return planned(problem, found.slots);
  return { ok: false, conflicts: refuse(problem, found.failure, seed) };
};

function planned(problem: Problem, slots: readonly Slot[]): Planned {
  const placements = problem.activities.map((activity, i): Placement => {
    const { mode, startS, endS, uses } = must(slots[i], activity.id);
    return {
      activity: activity.id,
      mode: must(activity.modes[mode.index], activity.id).id,
      startS: seconds(startS),
      endS: seconds(endS),
      uses: uses.map((resource, need) => ({
        need,
        resource: must(problem.resources[resource], activity.id).id,
      })),
    };
  });
  return { ok: true, schedule: { placements, links: chain(problem, placements) } };
}
