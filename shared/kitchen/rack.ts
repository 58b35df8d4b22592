import type { Rack } from './schema.ts';

/** A rack's area in whole square centimetres, rounded down: what a slot can hold at most. */
export function rackAreaCm2({ lengthM, depthM }: Pick<Rack, 'lengthM' | 'depthM'>): number {
  // The small addition keeps 0.6 m × 0.5 m at 3000 where binary fractions fall just short of it.
  return Math.floor(lengthM * depthM * 10_000 + 1e-6);
}

/**
 * What a rack may carry in whole grams, rounded down.
 * @example rackLoadG(rack) // 40 kg //=> 40000
 */
export function rackLoadG({ holdsKg }: Pick<Rack, 'holdsKg'>): number {
  return Math.floor(holdsKg * 1000 + 1e-6);
}
