import type { Cut, Step, StepOf } from '../catalogue/index.ts';
import type { Kilograms, Metres, StepId, Text } from '../kernel/index.ts';
import { kilograms, must, unreachable } from '../kernel/index.ts';
import type { Order } from './order.ts';
import type { Weights } from './weights.ts';
import { weightsOf } from './weights.ts';

/** What lies on a rack: a piece of meat, or a pan of it. */
export type Laid = {
  readonly lengthM: Metres;
  readonly widthM: Metres;
  readonly pieceKg: Kilograms;
  readonly piece: { readonly one: Text; readonly many: Text };
};

const pan = { one: { en: 'pan', es: 'charola' }, many: { en: 'pans', es: 'charolas' } } as const;

/** What a stay lays on a rack. */
export function laidOf({ weightKg, yields, ...cut }: Cut, { pans, piece }: StepOf<'place'>): Laid {
  if (pans) return { ...pans, pieceKg: pans.holdsKg, piece: piece ?? pan };
  const pieceKg = kilograms(weightKg.typical * yields.trim.typical);
  return { ...cut.footprint, pieceKg, piece: piece ?? cut.piece };
}

/** How many of those a batch of so many pieces is. */
export function laidCount(order: Order, stay: StepOf<'place'>, pieces: number): number {
  if (!stay.pans) return pieces;
  const weights = weightsAlong(order, weightsOf(order.cut, pieces));
  const heldKg = must(weights.get(stay.id), stay.id);
  return Math.max(1, Math.ceil(heldKg / stay.pans.holdsKg - 1e-9));
}

/** What a batch weighs at the start of each step; what spans others starts with them. */
export function weightsAlong(
  { steps }: Pick<Order, 'steps'>,
  weights: Weights,
): ReadonlyMap<StepId, Kilograms> {
  const along = new Map<StepId, Kilograms>();
  let nowKg = weights.rawKg;
  for (const { step } of steps) {
    along.set(step.id, nowKg);
    if (step.leaves) nowKg = weightAfter(step.leaves, weights);
  }
  for (const { step } of steps) {
    const from = step.work === 'place' ? along.get(step.spans.from.step) : undefined;
    if (from !== undefined) along.set(step.id, from);
  }
  return along;
}

function weightAfter(leaves: NonNullable<Step['leaves']>, weights: Weights): Kilograms {
  switch (leaves) {
    case 'trimmed':
      return weights.trimmedKg;
    case 'cooked':
      return weights.cookedKg;
    case 'served':
      return weights.servedKg;
    default:
      return unreachable(leaves);
  }
}
