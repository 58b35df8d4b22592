import type { LocalDay } from '../kernel/index.ts';
import type { CookPlan } from './schema.ts';

/**
 * The same plan for another day, as a week is planned from the week before. Services keep their
 * wall times, whatever the clock does in that night; whom and what it names must still be there,
 * which `build` says.
 * @example copyPlan(saturday, '2026-11-28').day //=> '2026-11-28'
 */
export function copyPlan(plan: CookPlan, toDay: LocalDay): CookPlan {
  return { ...plan, day: toDay };
}
