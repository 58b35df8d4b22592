import { atPaces, build, type Keeping, type PlanRefusal } from '../shared/plan/index.ts';
import type { Profile } from '../shared/safety/index.ts';
import type { DayFiles } from './day-files.ts';
import { planLimits, profileNamed, profileNames } from './plan-limits.ts';

export const refused = (refusal: PlanRefusal) =>
  ({ ok: false, why: 'refused', refusals: [refusal] }) as const;

/** The day that files ask for, in tasks; what has started of it can be kept. */
export function built(files: DayFiles, keeping?: Keeping, kept?: Profile) {
  const { cookPlan, kitchen, catalogue } = files;
  const profile = kept ?? profileNamed(kitchen.limits, files.limitChanges);
  if (profile === null) {
    const path = 'kitchen.json: limits';
    const allowed = `one of: ${profileNames.join(', ')}`;
    return refused({ rule: 'unknown-word', path, found: `"${kitchen.limits}"`, allowed });
  }
  const asHandsWork = atPaces(catalogue, files.paces ?? []);
  const of = { kitchen, catalogue: asHandsWork, limits: planLimits(profile) };
  const made = build(cookPlan, keeping ? { ...of, keeping } : of);
  if (!made.ok) return { ok: false, why: 'refused', refusals: made.refusals } as const;
  return { ...made, limits: profile };
}
