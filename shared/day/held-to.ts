import type { HeldTo } from '../safety/index.ts';
import type { AdoptedPlan } from './adopted-plan.ts';
import { limitsOf } from './limits-of.ts';
import type { DayState } from './state.ts';

/** What the day is held to, or the last one was where none runs; null before the first. */
export function heldTo({ plan, heldBefore }: DayState): HeldTo | null {
  return plan ? heldBy(plan) : heldBefore;
}

/** What a plan is held to. */
export function heldBy(plan: Pick<AdoptedPlan, 'limits' | 'limitChanges' | 'kitchen'>): HeldTo {
  const { kitchen, limitChanges: changes = [] } = plan;
  const { id, version } = limitsOf(plan) ?? { id: kitchen.limits, version: 0 };
  return { id, version, changes };
}
