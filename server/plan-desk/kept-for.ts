import { type DayState, isStillCooling, keptBy } from '../../shared/day/index.ts';
import type { LocalDay } from '../../shared/kernel/index.ts';
import type { PlanShown } from '../../shared/protocol/index.ts';
import { lastDay } from '../../shared/safety/index.ts';
import type { DayFiles } from '../day-files.ts';
import { profileNamed } from '../plan-limits.ts';

/** What the days before this one kept, where its date mark still lets it be used. */
export function keptFor(
  day: string,
  state: DayState,
  { kitchen, limitChanges }: Omit<DayFiles, 'cookPlan'>,
): PlanShown['kept'] {
  const profile = profileNamed(kitchen.limits, limitChanges);
  return keptBy(state).flatMap((food) => {
    const { day: madeOn, name, portions, weightKg, at } = food;
    const last = profile && lastDay(profile, madeOn as string as LocalDay);
    const isGood = madeOn < day && (last === null || day <= last);
    const isCooling = isStillCooling(state, food);
    const kept = { dish: name, madeOn, portions, weightKg, at, lastDay: last, isCooling };
    return isGood ? [kept] : [];
  });
}
