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
 * 100 raw, rows as copied into public nutrition data, the table itself not opened. They are oven
 * and braising tests to moderate ends; a smoker goes on to about 200 °F, so they bound our defaults
 * from above.
 */
describe('the default cooking yields are no better than an oven’s', () => {
  it.each([
    ['spare-ribs', 'spare ribs, roasted (NDB 10940)', 0.76],
    // Of the loin: no row for the butt was found.
    ['shoulder', 'boneless pork blade roast (NDB 10990)', 0.75],
    ['brisket', 'brisket, flat half, braised (NDB 13806)', 0.69],
    ['brisket-parted', 'brisket, flat half, braised (NDB 13806)', 0.69],
    ['brisket-point', 'brisket, flat half, braised (NDB 13806)', 0.69],
    ['short-ribs', 'short ribs, boneless, braised (NDB 23125)', 0.66],
  ])('%s: at most as %s', (id, _row, most) => {
    expect(yieldOf(id).high).toBeLessThanOrEqual(most);
    expect(yieldOf(id).typical).toBeLessThan(most);
  });

  it('sausage: typically below pork sausage, pan-fried, 80 % (NDB 7064)', () => {
    expect(yieldOf('lean-trim').typical).toBeLessThan(0.8);
  });
});
