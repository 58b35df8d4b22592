import { describe, expect, it } from 'vitest';
import { shapeExponent } from '../../../shared/cook/shape.ts';
import { metres } from '../../../shared/kernel/index.ts';

const sides = (thickness: number, width: number, length: number) => ({
  thicknessM: metres(thickness),
  widthM: metres(width),
  lengthM: metres(length),
});

describe('the shape exponent', () => {
  it('is that of a slab where the other sides are long', () => {
    expect(shapeExponent(sides(0.1, 1e6, 1e6))).toBeCloseTo(0, 5);
  });

  it('is that of a cylinder for a long square bar, and of a sphere for a cube', () => {
    expect(shapeExponent(sides(0.1, 0.1, 1e6))).toBeCloseTo(1, 5);
    expect(shapeExponent(sides(0.1, 0.1, 0.1))).toBeCloseTo(2, 12);
  });

  it('does not depend on which side is called the thickness', () => {
    const other = shapeExponent(sides(0.1, 0.18, 0.22));
    expect(shapeExponent(sides(0.22, 0.1, 0.18))).toBeCloseTo(other, 12);
    expect(shapeExponent(sides(0.1, 0.18, 0.22))).toBeCloseTo(1.01, 2);
  });
});
