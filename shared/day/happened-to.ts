import type { BatchId, DishId, Instant, ServiceId, SmokerId } from '../kernel/index.ts';
import { type Spell, saleKey } from './happened.ts';
import type { DayState } from './state.ts';

/** The spell that a smoker is in; null while it is as it should be. */
export function spellOf({ happened }: DayState, smoker: SmokerId): Spell | null {
  return happened.spells.find((each) => each.smoker === smoker && each.until === null) ?? null;
}

/** Whether a smoker is out, so that nothing cooks in it. */
export const isDown = (state: DayState, smoker: SmokerId): boolean =>
  spellOf(state, smoker)?.kind === 'down';

/** Portions of a dish counted at a service so far. */
export const soldAt = ({ happened }: DayState, service: ServiceId, dish: DishId): number =>
  happened.sold.get(saleKey(service, dish)) ?? 0;

/** Since when a dish is sold out at a service; null while it is not. */
export const soldOutAt = (
  { happened }: DayState,
  service: ServiceId,
  dish: DishId,
): Instant | null => happened.soldOut.get(saleKey(service, dish))?.at ?? null;

/** Since when nothing is left of a batch; null while something is. */
export const emptiedAt = ({ happened }: DayState, batch: BatchId): Instant | null =>
  happened.emptied.get(batch)?.at ?? null;

/** Whether a change of the plan has to go round anything: what has begun, or what is lacking. */
export function isUnsettled({ tasks, happened }: DayState): boolean {
  const { spells, out, deliveries } = happened;
  return tasks.size + out.size + deliveries.size > 0 || spells.some(({ until }) => until === null);
}
