import { describe, expect, it } from 'vitest';
import type { Mix } from '../../shared/catalogue/index.ts';
import { fromPounds, kilograms, type MixId, toPounds } from '../../shared/kernel/index.ts';
import { mixLine } from '../../shared/plan/index.ts';
import { rawFor } from '../../shared/plan/weights.ts';
import { onlyTrim } from './one-yield.ts';

/**
 * Kitchen arithmetic reckoned by hand; no source but the formulas of every kitchen-mathematics
 * text.
 */
const rub: Mix = {
  id: 'rub' as MixId,
  name: { en: 'Rub' },
  kind: 'rub',
  parts: [50, 30, 20].map((parts) => ({ ingredient: { en: `${parts}` }, parts, allergens: [] })),
  dose: { of: 'trimmed weight', share: 0.02 },
  overShare: 0,
};
const gramsOf = (line: ReturnType<typeof mixLine>) =>
  line.parts.map(({ weightKg }) => Math.round(weightKg * 1e6) / 1e3);

describe('mixes scaled', () => {
  it('a rub at 2 % on 10 kg is 200 g, and by 50, 30, 20 parts 100, 60 and 40 g', () => {
    expect(gramsOf(mixLine(rub, kilograms(10 * 0.02)))).toEqual([100, 60, 40]);
  });

  it('a formula of 20 made for 40 is taken twice, for 6 by three tenths', () => {
    const [base, twice, less] = [20, 40, 6].map((weight) =>
      gramsOf(mixLine(rub, kilograms(weight))),
    );
    expect(twice).toEqual(base?.map((grams) => grams * 2));
    expect(less).toEqual(base?.map((grams) => grams * 0.3));
  });
});

describe('yields chained', () => {
  it('100 portions of 5 oz at 52 % are 60.10 lb as purchased', () => {
    const raw = rawFor(onlyTrim(0.52), fromPounds((100 * 5) / 16));
    expect(toPounds(raw)).toBeCloseTo(60.1, 2);
  });

  it('trim, cook and carve multiply', () => {
    const exactly = (typical: number) => ({ low: typical, typical, high: typical });
    const yields = { trim: exactly(0.8), cook: exactly(0.7), carve: exactly(0.95) };
    const raw = rawFor({ ...onlyTrim(1), yields }, kilograms(5.32));
    expect(raw).toBeCloseTo(10, 9);
  });
});
