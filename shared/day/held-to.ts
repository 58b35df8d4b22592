import type { HeldTo, LimitsChange } from '../safety/index.ts';
import type { AdoptedPlan } from './adopted-plan.ts';
import { limitsOf } from './limits-of.ts';
import type { DayState } from './state.ts';

/** Other limits than those of the last day, and what was said of why. */
export type LimitsFact = {
  readonly kind: 'limitsChanged';
  readonly from: LimitsName;
  readonly to: LimitsName;
  readonly changes: readonly Pick<LimitsChange, 'why' | 'by'>[];
};

/** A profile of limits, as one version has it. */
export type LimitsName = Pick<HeldTo, 'id' | 'version'>;

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
