import type { Cut, StepOf } from '../catalogue/index.ts';
import { unreachable } from '../kernel/index.ts';
import type { Cooler, Kitchen } from '../kitchen/index.ts';
import type { Need, ResourceId } from '../schedule/index.ts';
import { resourceId } from './resources.ts';
import { evenly } from './split.ts';
import type { Weights } from './weights.ts';

type Keep = NonNullable<StepOf<'wait'>['keep']>;
type Places = {
  readonly role: 'cooler' | 'pans' | 'whole';
  readonly places: readonly { readonly resource: ResourceId; readonly capacity: number }[];
};

/** The places of a kitchen where something waits, with what each holds. */
export function placesToKeep(kitchen: Kitchen, where: Keep['in']): Places {
  const cabinets = (holds: 'pans' | 'whole'): Places => ({
    role: holds,
    places: kitchen.cabinets.map((cabinet) => ({
      resource: resourceId({ kind: 'cabinet', cabinet: cabinet.id, holds }),
      capacity: cabinet[holds],
    })),
  });
  switch (where) {
    case 'cooler':
      return { role: 'cooler', places: kitchen.coolers.map(coolerPlace) };
    case 'cabinet, whole':
      return cabinets('whole');
    case 'cabinet, in pans':
      return cabinets('pans');
    default:
      return unreachable(where);
  }
}

/** All shelves of a cooler taken together, in square centimetres. */
function coolerPlace({ id, shelves, lengthM, depthM }: Cooler) {
  const capacity = Math.floor(shelves * lengthM * depthM * 10_000 + 1e-6);
  return { resource: resourceId({ kind: 'cooler', cooler: id }), capacity };
}

/**
 * How much of such places a batch takes: square centimetres of shelf, pans, or places for whole
 * pieces.
 */
export function amountToKeep(keep: Keep, cut: Cut, batch: Weights & { pieces: number }): number {
  switch (keep.in) {
    case 'cooler': {
      const { lengthM, widthM } = cut.footprint;
      return Math.ceil(batch.pieces * lengthM * widthM * 10_000 - 1e-6);
    }
    case 'cabinet, whole':
      return batch.pieces;
    case 'cabinet, in pans':
      return Math.ceil(batch.cookedKg / keep.panHoldsKg - 1e-9);
    default:
      return unreachable(keep);
  }
}

/**
 * One need where one place can hold it all, else as many even ones as the largest place asks for.
 */
export function needsToKeep({ role, places }: Places, amount: number): Need[] {
  const largest = Math.max(...places.map(({ capacity }) => capacity));
  return evenly(amount, Math.ceil(amount / largest)).map((share) => ({
    role,
    amount: share,
    oneOf: places.filter(({ capacity }) => capacity >= share).map(({ resource }) => resource),
  }));
}
