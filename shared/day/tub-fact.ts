import type { BatchId, Kilograms } from '../kernel/index.ts';

/** A tub of trim of a batch, as the scale showed it; a new one replaces the last. */
export type TubFact = {
  readonly kind: 'tubWeighed';
  readonly batch: BatchId;
  readonly tub: string;
  readonly weightKg: Kilograms;
};

/** The same, asked for. */
export type TubIntent = {
  readonly kind: 'weighTub';
  readonly batch: BatchId;
  readonly tub: string;
  readonly weightKg: Kilograms;
};

export type TubKey = `${string}#${string}`;

/** A tub of a batch. @example tubKey('noon-ribs-1', 'skirt') //=> 'noon-ribs-1#skirt' */
export const tubKey = (batch: BatchId, tub: string): TubKey => `${batch}#${tub}`;
