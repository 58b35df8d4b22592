import { describe, expect, it } from 'vitest';
import { butchersTest } from '../../shared/plan/index.ts';

/**
 * "The Butchers Yield Test" (thekitchenbadass.wordpress.com), read in a stored copy: beef rib 103
 * trimmed to 109. The page prints $36.40 − $8.00 = $22.40, a slip: the difference is $28.40, and
 * all that follows is taken from that.
 */
describe('the butcher’s test of a beef rib of 28 lb at $1.30', () => {
  const { weight, cost, pricePerWeight } = butchersTest({
    purchased: { weight: 28, pricePerWeight: 1.3 },
    trim: [
      { weight: 3, pricePerWeight: 0.1 },
      { weight: 4, pricePerWeight: 0.3 },
      { weight: 5, pricePerWeight: 1.3 },
    ],
  });

  it('leaves 16 lb', () => {
    expect(weight).toBe(16);
  });

  it('costs $28.40 once the trim is worth $8.00', () => {
    expect(cost).toBeCloseTo(28.4, 9);
  });

  it('comes to $1.775 a pound', () => {
    expect(pricePerWeight).toBeCloseTo(1.775, 9);
  });
});
