import { hours, type Instant, resolveLocal } from '../shared/kernel/index.ts';
import type { CookPlan } from '../shared/plan/index.ts';
import type { PlanOfDay } from './folder/index.ts';

/** A day is worked on so long after its last service closes: holding, cooling, washing. */
const AFTER_CLOSING_S = hours(2);

/**
 * The plan to work by at `now`: the first whose day is not over. A broken file counts as a whole
 * day.
 */
export function dueAt(plans: readonly PlanOfDay[], now: Instant, zone: string): PlanOfDay | null {
  return (
    plans.find(({ day, plan }) => !isOver({ day, services: plan?.services }, now, zone)) ?? null
  );
}

/** Whether the work of a day is done with, by its closing times. */
export function isOver(
  { day, services }: { readonly day: string; readonly services: CookPlan['services'] | undefined },
  now: Instant,
  zone: string,
): boolean {
  const closings = services?.map(({ closes }) => closes) ?? ['24:00'];
  const ends = closings.map((time) => resolveLocal(day, time, zone).at);
  return now >= Math.max(...ends) + AFTER_CLOSING_S * 1000;
}
