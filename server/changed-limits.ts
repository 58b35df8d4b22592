import { type AdoptedPlan, heldBy, type LimitsFact } from '../shared/day/index.ts';
import { canonical } from '../shared/kernel/index.ts';
import type { PlanRefusal } from '../shared/plan/index.ts';
import { type HeldTo, type LimitsStep, stepBetween } from '../shared/safety/index.ts';
import type { DayFiles } from './day-files.ts';
import { profileNamed } from './plan-limits.ts';

/** Why the limits of these files may not follow on those of the last day; null where they may. */
export function whyNotLimits(before: HeldTo | null, files: DayFiles): PlanRefusal | null {
  const limits = profileNamed(files.kitchen.limits, files.limitChanges);
  if (limits === null) return null;
  const next = heldBy({ ...files, limits });
  const step = stepBetween(before, next);
  if (step.ok) return null;
  return { rule: 'limits-changed', why: step.why, from: nameOf(before ?? next), to: nameOf(next) };
}

/** Whether these files hold a running day to what it is held to already. */
export function isHeldAlike(plan: AdoptedPlan, { kitchen, limitChanges = [] }: DayFiles): boolean {
  const { id, changes } = heldBy(plan);
  return id === kitchen.limits && canonical(changes) === canonical(limitChanges);
}

/** What is to be kept of a change of the limits beside the plan that comes with it. */
export function limitsFacts(before: HeldTo | null, plan: AdoptedPlan): LimitsFact[] {
  const next = heldBy(plan);
  const fresh = freshIn(stepBetween(before, next));
  if (fresh.length === 0) return [];
  const from = before ?? { id: next.id, version: next.version - fresh.length };
  const changes = fresh.map(({ why, by }) => ({ why, by }));
  return [{ kind: 'limitsChanged', from: nameOf(from), to: nameOf(next), changes }];
}

const freshIn = (step: LimitsStep) => (step.ok ? step.fresh : []);

const nameOf = ({ id, version }: Pick<HeldTo, 'id' | 'version'>) => ({ id, version });
