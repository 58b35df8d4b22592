import { describe, expect, it } from 'vitest';
import { kilograms } from '../../shared/kernel/index.ts';
import { butchersTest, cutTest } from '../../shared/plan/index.ts';
import { rawFor } from '../../shared/plan/weights.ts';
import { onlyTrim } from './one-yield.ts';

/**
 * G. Wall, "Trade Calculations", objective 4: yield and cost of edible product (May 2007), read in
 * a stored copy. Its inputs are printed; the answers it works out in pictures are reckoned here
 * from them.
 */
describe('a striploin of 5.2 kg that weighs 4.6 kg trimmed', () => {
  it('yields 88.46 %, which the source rounds to 88.5 %', () => {
    const { shares } = cutTest(5.2, { trimmed: 4.6 });
    expect(shares.trimmed).toBeCloseTo(0.8846, 4);
  });

  it('costs $13.51 a kilogram trimmed where it cost $11.95 as bought', () => {
    const purchased = { weight: 5.2, pricePerWeight: 11.95 };
    const test = butchersTest({ purchased, trim: [{ weight: 0.6, pricePerWeight: 0 }] });
    expect(test.pricePerWeight).toBeCloseTo(13.51, 2);
  });

  it('must be bought at 16.33 kg for 85 portions of 170 g', () => {
    const servedKg = kilograms(85 * 0.17);
    expect(servedKg).toBeCloseTo(14.45, 9);
    expect(rawFor(onlyTrim(4.6 / 5.2), servedKg)).toBeCloseTo(16.33, 2);
  });
});
