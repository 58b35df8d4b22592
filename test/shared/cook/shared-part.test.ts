import { describe, expect, it } from 'vitest';
import { normals, scoreOf } from '../../../shared/cook/normal.ts';
import { sharedPart } from '../../../shared/cook/shared-part.ts';
import { seeded } from '../../../shared/kernel/index.ts';

const normal = normals(seeded(5));
const rows = Array.from({ length: 400 }, () => [normal(), normal(), normal()]);
const mixed = (of: (row: readonly number[]) => number) => rows.map(of);
const causes = rows.map((row) => row.slice(0, 2));

describe('the normal score of a share', () => {
  // Any table of the standard normal distribution.
  it.each([
    [0.5, 0],
    [0.9, 1.2816],
    [0.975, 1.96],
    [0.025, -1.96],
    [0.999, 3.0902],
  ])('of %d is %d, as tables print it', (share, score) => {
    expect(Math.abs(scoreOf(share) - score)).toBeLessThan(0.0005);
  });
});

describe('how much of a spread has causes in common', () => {
  it('is the share of the variance that they make, as the variances of a sum add up', () => {
    // 0.6 x + 0.8 y + 1.0 z: x and y make 1 of 2 parts of it.
    const found = sharedPart(
      mixed(([x = 0, y = 0, z = 0]) => 0.6 * x + 0.8 * y + z),
      causes,
    );
    expect(Math.abs(found - 0.5)).toBeLessThan(0.06);
  });

  it('is nothing of what hangs on something else alone', () => {
    expect(
      sharedPart(
        mixed(([, , z = 0]) => z),
        causes,
      ),
    ).toBeLessThan(0.02);
  });

  it('is all of what hangs on them alone, also where some never come', () => {
    const values = mixed(([x = 0]) => (x > 1.5 ? Number.POSITIVE_INFINITY : Math.exp(x)));
    expect(sharedPart(values, causes)).toBeGreaterThan(0.95);
  });

  it('is nothing where there is no spread', () => {
    expect(
      sharedPart(
        mixed(() => 7),
        causes,
      ),
    ).toBe(0);
  });
});
