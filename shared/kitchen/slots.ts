import type { SlotId } from '../kernel/index.ts';
import type { Kitchen, Rack, Smoker } from './schema.ts';

/** One rack of one smoker; `number` is how it is marked, 1 at the top. */
export type Slot = { readonly smoker: Smoker; readonly rack: Rack; readonly number: number };

/**
 * The slot of that name, or null where this kitchen has none.
 * @example findSlot(kitchen, 'a/2')?.number //=> 2
 */
export function findSlot({ smokers }: Pick<Kitchen, 'smokers'>, id: SlotId): Slot | null {
  for (const smoker of smokers) {
    const index = smoker.racks.findIndex(({ slot }) => slot === id);
    const rack = smoker.racks[index];
    if (rack) return { smoker, rack, number: index + 1 };
  }
  return null;
}
