import { adoption, makePlan } from '../../server/adopt.ts';
import type { Brought } from '../../server/hub/index.ts';
import type { AdoptedPlan, Fact } from '../../shared/day/index.ts';
import { instant, must } from '../../shared/kernel/index.ts';
import { readPlanFiles } from '../../shared/plan/index.ts';
import { BEGINNING_MS } from './device-clock.ts';
import { catalogue, cookPlan, kitchen } from './small-kitchen.ts';

/**
 * The small kitchen's day as a hub is given it, worked out by the real builder and the real
 * planner.
 */
export function smallDay(): Brought {
  const files = readPlanFiles({ catalogue, kitchen, cookPlan });
  if (!files.ok) throw new Error(JSON.stringify(files.problems));
  const made = makePlan(files.value, 1);
  if (!made.ok) throw new Error(JSON.stringify(made));
  const brought = adoption(made.plan, instant(BEGINNING_MS));
  return { ...brought, facts: [...brought.facts, ...offTheFire(made.plan)] };
}

/** One batch has come off already: what is looked at, carved and sold is there from the first. */
function offTheFire({ built, schedule }: AdoptedPlan): Fact[] {
  const [batch] = built.batches;
  const startOf = (id: string) =>
    must(
      schedule.placements.find(({ activity }) => activity === id),
      id,
    ).startS;
  return built.tasks
    .filter((task) => task.batch === batch?.id && task.work === 'hands' && task.step !== 'carve')
    .sort((a, b) => startOf(a.id) - startOf(b.id))
    .flatMap(({ id: task }): Fact[] => [
      { kind: 'taskStarted', task, hand: null },
      { kind: 'taskFinished', task },
    ]);
}
