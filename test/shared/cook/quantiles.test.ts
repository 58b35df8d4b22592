import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quantiles, quantilesOf } from '../../../shared/cook/quantiles.ts';

const never = Number.POSITIVE_INFINITY;

describe('quantiles', () => {
  it('lie straight between the middles of what each value counts for', () => {
    expect(quantiles([1, 3], [0.25, 0.5, 0.75])).toEqual([1, 2, 3]);
    expect(quantiles([3, 1, 2], [0, 0.5, 1])).toEqual([1, 2, 3]);
    const uneven = [
      { value: 0, weight: 3 },
      { value: 10, weight: 1 },
    ];
    // The middles lie at 3/8 and 7/8.
    expect(quantilesOf(uneven, [0.375, 0.625, 0.875])).toEqual([0, 5, 10]);
  });

  it('are never where enough never comes, and are not drawn towards it before', () => {
    expect(quantiles([1, 2, never, never], [0.1, 0.9])).toEqual([1, never]);
    expect(quantiles([1, 2, 3, 4, 5, 6, 7, 8, 9, never], [0.5])[0]).toBeCloseTo(5.5, 12);
  });

  it('do not see what counts for nothing', () => {
    const values = [
      { value: 5, weight: 1 },
      { value: never, weight: 0 },
    ];
    expect(quantilesOf(values, [0.99])).toEqual([5]);
  });

  it('of nothing are not a number', () => {
    expect(quantiles([], [0.5])).toEqual([Number.NaN]);
  });

  it('rise with the share and stay within the values', () => {
    const values = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1 });
    fc.assert(
      fc.property(values, (sample) => {
        const found = quantiles(sample, [0.1, 0.3, 0.5, 0.7, 0.9]);
        const ways = [Math.min(...sample), ...found, Math.max(...sample)];
        for (const [i, value] of ways.entries()) {
          expect((ways[i + 1] ?? value) - value).toBeGreaterThan(-1e-6);
        }
      }),
    );
  });
});
