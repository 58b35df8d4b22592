import type { SlotId } from '../kernel/index.ts';
import type { Kitchen, Slot } from '../kitchen/index.ts';
import { findSlot } from '../kitchen/index.ts';
import type { SlotName } from '../plan/index.ts';
import { type PlanIndex, slotName } from './plan-index.ts';
import type { DayState } from './state.ts';

type Known = {
  readonly state: Pick<DayState, 'kitchens'>;
  readonly index: Pick<PlanIndex, 'plan'>;
};

/** The first that this day's kitchens know, the one that is before those that were changed. */
export function everIn<Thing>(
  { state, index }: Known,
  find: (kitchen: Kitchen) => Thing | null | undefined,
): Thing | null {
  for (const kitchen of [index.plan.kitchen, ...state.kitchens.toReversed()]) {
    const found = find(kitchen);
    if (found) return found;
  }
  return null;
}

/** A rack as it is, or was before it was taken away. */
export const slotEver = (known: Known, id: SlotId): Slot | null =>
  everIn(known, (kitchen) => findSlot(kitchen, id));

/** The same by name; by its id where no kitchen of this day has had it. */
export const slotNamedEver = (known: Known, id: SlotId): SlotName =>
  everIn(known, (kitchen) => slotName(kitchen, id)) ?? { id, smoker: { en: id }, rack: '?' };
