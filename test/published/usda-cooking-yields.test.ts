import { describe, expect, it } from 'vitest';
import { must } from '../../shared/kernel/index.ts';
import { filesWith } from '../shared/plan/three-elms.ts';

const { cuts } = filesWith().catalogue;
const yieldOf = (id: string) =>
  must(
    cuts.find((cut) => cut.id === id),
    id,
  ).yields.cook;

/**
 * USDA Table of Cooking Yields for Meat and Poultry (ARS, 2012; release 2, 2014): cooked weight of
 * 100 raw, rows as transcribed in public nutrition data, the table itself not opened. They are oven
 * and braising tests to moderate ends; a smoker goes on to about 200 °F, so they bound our defaults
 * from above.
 */
describe('the default cooking yields are no better than an oven’s', () => {
  it('spare ribs, roasted: 76 % (NDB 10940)', () => {
    expect(yieldOf('spare-ribs').high).toBeLessThanOrEqual(0.76);
    expect(yieldOf('spare-ribs').typical).toBeLessThan(0.76);
  });

  // Of the loin: no row for the butt was found.
  it('shoulder: below boneless pork blade roast, 75 % (NDB 10990)', () => {
    expect(yieldOf('shoulder').high).toBeLessThanOrEqual(0.75);
  });
});
