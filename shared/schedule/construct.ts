import type { Planner } from './model.ts';
import { noRoom, refuse } from './refuse.ts';
import { scheduleOf } from './schedule-of.ts';
import { search } from './search.ts';
import { validate } from './validate.ts';

const ATTEMPTS = 16;

/**
 * Plans backward from the goals, each activity as late as it can be, so that food is fresh; what no
 * goal waits for is placed as early as it can be. A few seeded restarts follow if an order of
 * placing leads into a corner. The answer is a schedule that keeps everything, or a refusal.
 */
export const construct: Planner = (problem, { seed, attempts = ATTEMPTS, isTrial }) => {
  const conflicts = validate(problem);
  if (conflicts.length > 0) return { ok: false, conflicts };
  const lateS = problem.goals.map(() => 0);
  const found = search(problem, { seed, lateS, attempts });
  if (found.ok) return { ok: true, schedule: scheduleOf(problem, found.slots) };
  if (isTrial) return { ok: false, conflicts: [noRoom(problem, found.failure)] };
  return { ok: false, conflicts: refuse(problem, found.failure, seed) };
};
