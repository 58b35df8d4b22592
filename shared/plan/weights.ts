import type { Cut } from '../catalogue/index.ts';
import type { Kilograms } from '../kernel/index.ts';
import { kilograms } from '../kernel/index.ts';

/** The weight of a batch at each stage of its way. */
export type Weights = {
  readonly rawKg: Kilograms;
  readonly trimmedKg: Kilograms;
  readonly cookedKg: Kilograms;
  readonly servedKg: Kilograms;
};

type Yields = Pick<Cut, 'weightKg' | 'yields'>;

/**
 * What so many pieces weigh on their way from the cooler to the plate, at typical weights and
 * yields.
 * @example weightsOf(shoulder, 2).trimmedKg //=> 2 × 3.4 kg × 92 %
 */
export function weightsOf({ weightKg, yields }: Yields, pieces: number): Weights {
  const rawKg = pieces * weightKg.typical;
  const trimmedKg = rawKg * yields.trim.typical;
  const cookedKg = trimmedKg * yields.cook.typical;
  return {
    rawKg: kilograms(rawKg),
    trimmedKg: kilograms(trimmedKg),
    cookedKg: kilograms(cookedKg),
    servedKg: kilograms(cookedKg * yields.carve.typical),
  };
}

/**
 * Raw weight that so much served weight asks for: served ÷ carving ÷ cooking ÷ trimming yield.
 * @example rawFor(ribs, kilograms(10))
 */
export function rawFor({ yields }: Yields, servedKg: Kilograms): Kilograms {
  const whole = yields.trim.typical * yields.cook.typical * yields.carve.typical;
  return kilograms(servedKg / whole);
}

/**
 * Whole pieces that so many portions ask for, rounded up: half a slab cannot be pulled.
 * @example piecesFor(ribs, kilograms(0.34), 60)
 */
export function piecesFor(cut: Yields, portionKg: Kilograms, portions: number): number {
  const pieces = rawFor(cut, kilograms(portions * portionKg)) / cut.weightKg.typical;
  return Math.ceil(pieces - ROUNDING);
}

/** Whole pieces that so much raw weight makes. @example piecesWithin(ribs, kilograms(10)) */
export function piecesWithin({ weightKg }: Yields, rawKg: Kilograms): number {
  return Math.floor(rawKg / weightKg.typical + ROUNDING);
}

/** Whole portions that so many pieces give. @example portionsFrom(ribs, kilograms(0.34), 12) */
export function portionsFrom(cut: Yields, portionKg: Kilograms, pieces: number): number {
  return Math.floor(weightsOf(cut, pieces).servedKg / portionKg + ROUNDING);
}

/** Keeps a whole number whole where binary fractions fall just beside it. */
const ROUNDING = 1e-9;
