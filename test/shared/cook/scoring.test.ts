import { describe, expect, it } from 'vitest';
import { crps, likelyOf } from './scoring.ts';

describe('the score of a forecast', () => {
  it('is the miss, where only one time is named', () => {
    expect(crps([5], 8)).toBe(3);
  });

  it('of a normal one that hits its middle is 0.2337 of its standard deviation', () => {
    // (√2 - 1)/√π: Gneiting and Raftery 2007. Two thousand equally likely values of a standard
    // normal, by its distribution function.
    const erf = (x: number) => {
      const t = 1 / (1 + 0.3275911 * Math.abs(x));
      const series =
        t *
        (0.254829592 +
          t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
      return Math.sign(x) * (1 - series * Math.exp(-x * x));
    };
    const below = (x: number) => (1 + erf(x / Math.SQRT2)) / 2;
    const values: number[] = [];
    for (let x = -5; values.length < 2000; x += 1e-4) {
      if (below(x) >= (values.length + 0.5) / 2000) values.push(x);
    }
    expect(crps(values, 0)).toBeCloseTo(0.2337, 3);
  });

  it('is better for a narrow forecast than for a wide one, as long as it is right', () => {
    expect(crps([9, 10, 11], 10)).toBeLessThan(crps([5, 10, 15], 10));
    expect(crps([9, 10, 11], 20)).toBeGreaterThan(crps([5, 10, 15], 20));
  });
});

describe('equally likely values of a sample', () => {
  it('are its own values where there are as many', () => {
    expect(likelyOf([3, 1, 2], 3)).toEqual([1, 2, 3]);
  });

  it('lie between them where there are more, and never outside', () => {
    const found = likelyOf([10, 20], 4);
    expect(found).toEqual([10, 12.5, 17.5, 20]);
  });
});
