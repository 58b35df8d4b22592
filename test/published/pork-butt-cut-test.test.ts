import { describe, expect, it } from 'vitest';
import { cutTest } from '../../shared/plan/index.ts';

/**
 * "Pork Butt Cutting Test", a retired meat cutter's post (smokingmeatforums.com/t/76024), read in a
 * stored copy: one test of two butts of 15.91 lb. It prints shares cut off, not rounded: 4.96 % for
 * what is 4.965 %.
 */
describe('the cut test of two pork butts of 15.91 lb', () => {
  it('is 6.91 % bone, 4.97 % scrap and 88.12 % boneless', () => {
    const { shares, missing } = cutTest(15.91, { bone: 1.1, scrap: 0.79, boneless: 14.02 });
    expect(shares.bone * 100).toBeCloseTo(6.91, 2);
    expect(shares.scrap * 100).toBeCloseTo(4.97, 2);
    expect(shares.boneless * 100).toBeCloseTo(88.12, 2);
    expect(missing).toBeCloseTo(0, 9);
  });

  it('goes on into steak, country-style ribs and sausage with nothing lost', () => {
    const parts = { bone: 1.1, scrap: 0.79, sausage: 1.61, steak: 4.36, ribs: 8.05 };
    const { shares, missing } = cutTest(15.91, parts);
    expect(shares.steak * 100).toBeCloseTo(27.4, 1);
    expect(shares.ribs * 100).toBeCloseTo(50.59, 1);
    expect(missing).toBeCloseTo(0, 9);
  });
});
