import { describe, expect, it } from 'vitest';
import { filesWith } from '../shared/plan/three-elms.ts';

/** Ground, boiled or rendered, and so not barbecued meat; nor are plants. */
const otherwise = ['lean-trim', 'stock-bones', 'clean-fat'];

/**
 * 9 CFR 319.80, read in the primary text: barbecued meat weighs at most 70 % of the fresh uncooked
 * meat. A rule for the labels of inspected plants; here a check that the defaults are those of
 * barbecue.
 */
describe('the cooked weight of every cut that is barbecued', () => {
  const barbecued = filesWith().catalogue.cuts.filter(
    ({ id, species }) => species !== 'plant' && !otherwise.includes(id),
  );
  it.each(barbecued.map((cut) => [cut.id, cut.yields] as const))(
    '%s: at most 70 %% of what went into the smoker',
    (_id, { cook }) => {
      expect(cook.typical).toBeLessThanOrEqual(0.7);
    },
  );
});
