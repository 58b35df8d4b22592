import { describe, expect, it } from 'vitest';
import { fromPounds, must } from '../../shared/kernel/index.ts';
import { portionsFrom, weightsOf } from '../../shared/plan/weights.ts';
import { filesWith } from '../shared/plan/three-elms.ts';
import { onlyTrim } from './one-yield.ts';

/**
 * Armed Forces Recipe Service, MCO P10110.42B, L 092 00, Barbecued Spareribs, read in a stored
 * copy: 75 lb of raw spareribs make 100 portions of 7 oz, sauce included; boiled, then baked.
 */
describe('75 lb of spareribs', () => {
  it('are 100 portions of 7 oz at the 58.3 % that the card comes to', () => {
    const served = (100 * 7) / 16 / 75;
    expect(served).toBeCloseTo(0.583, 3);
    const card = { ...onlyTrim(served), weightKg: pounds(75) };
    expect(portionsFrom(card, fromPounds(7 / 16), 1)).toBe(100);
  });

  it('give less when they are squared, smoked and served without sauce', () => {
    const ribs = must(
      filesWith().catalogue.cuts.find(({ id }) => id === 'spare-ribs'),
      'ribs',
    );
    const { servedKg, rawKg } = weightsOf(ribs, 1);
    expect(servedKg / rawKg).toBeLessThan(0.583);
  });
});

const pounds = (weight: number) => ({
  low: fromPounds(weight),
  typical: fromPounds(weight),
  high: fromPounds(weight),
});
