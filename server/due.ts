import { hours, type Instant, resolveLocal } from '../shared/kernel/index.ts';
import type { PlanOfDay } from './folder/index.ts';

/** A day is worked on so long after its last service closes: holding, cooling, washing. */
const AFTER_CLOSING_S = hours(2);

/** The plan to work by at `now`: the first whose day is not over. A broken file counts as a whole day. */
export function dueAt(plans: readonly PlanOfDay[], now: Instant, zone: string): PlanOfDay | null {
  return plans.find((plan) => now < endOf(plan, zone)) ?? null;
}

function endOf({ day, plan }: PlanOfDay, zone: string): number {
  const closings = plan?.services.map(({ closes }) => closes) ?? ['24:00'];
  const ends = closings.map((time) => resolveLocal(day, time, zone).at);
  return Math.max(...ends) + AFTER_CLOSING_S * 1000;
}
