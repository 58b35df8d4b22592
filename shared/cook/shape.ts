import type { Metres } from '../kernel/index.ts';

/** A piece as it lies: its three sides, in any order. */
export type Sides = {
  readonly thicknessM: Metres;
  readonly widthM: Metres;
  readonly lengthM: Metres;
};

/**
 * How heat reaches the middle of a piece: 0 from two faces as in a slab, 1 from all round as in a
 * long cylinder, 2 from everywhere as in a ball. From surface and volume, m = A·L/V - 1 with L
 * half the thickness, which is exact for those three and the usual device between them (the
 * equivalent heat transfer dimension of ASHRAE Refrigeration, "Cooling and freezing times of
 * foods"; from memory).
 * @example shapeExponent({ thicknessM: metres(0.1), widthM: metres(0.18), lengthM: metres(0.22)
 * }) //=> 1.01
 */
export function shapeExponent({ thicknessM, widthM, lengthM }: Sides): number {
  const half = Math.min(thicknessM, widthM, lengthM) / 2;
  // Of a brick, A/V = 2/a + 2/b + 2/c.
  return half * (2 / thicknessM + 2 / widthM + 2 / lengthM) - 1;
}
