import { describe, expect, it } from 'vitest';
import { fromPounds, toPounds } from '../../shared/kernel/index.ts';
import { portionsFrom, rawFor, weightsOf } from '../../shared/plan/weights.ts';
import { onlyTrim } from './one-yield.ts';

/**
 * A school food-service manual ("FSM2025-Supplement", page 608): as-purchased and edible-portion
 * amounts, read in a stored copy.
 */
describe('the worked examples of a school food manual', () => {
  it('5 lb of broccoli florets at a yield of 0.81 are 6.17 lb as purchased', () => {
    expect(toPounds(rawFor(onlyTrim(0.81), fromPounds(5)))).toBeCloseTo(6.17, 2);
  });

  it('36 lb of whole turkey at 0.47 are 16.92 lb, and 90 servings of 3 oz', () => {
    const turkey = { ...onlyTrim(0.47), weightKg: twelvePounds };
    expect(toPounds(weightsOf(turkey, 3).servedKg)).toBeCloseTo(16.92, 9);
    expect(portionsFrom(turkey, fromPounds(3 / 16), 3)).toBe(90);
  });

  // From a second manual whose title was not kept; the arithmetic is the same.
  it('20 lb of cabbage at 0.79 are 25.3 lb as purchased', () => {
    expect(toPounds(rawFor(onlyTrim(0.79), fromPounds(20)))).toBeCloseTo(25.3, 1);
  });
});

const twelvePounds = {
  low: fromPounds(12),
  typical: fromPounds(12),
  high: fromPounds(12),
};
