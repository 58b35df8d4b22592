import { adoption, makePlan } from '../../server/adopt.ts';
import type { Brought } from '../../server/hub/index.ts';
import { instant } from '../../shared/kernel/index.ts';
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
  return adoption(made.plan, instant(BEGINNING_MS));
}
