/**
 * FSIS Processing Inspectors' Calculations Handbook, chapter 3 (1995), read in a copy typed anew:
 * secondary copy. The forms in ounces and gallons are of 9 CFR 424.21(c), from memory.
 */
import { describe, expect, it } from 'vitest';
import { fromPounds, kilograms } from '../../shared/kernel/index.ts';
import type { CureMethod } from '../../shared/safety/index.ts';
import {
  CURE_STRENGTH,
  cureGramsPerKg,
  foodCode,
  judgeNitrite,
  pumpedPpm,
  rubbedPpm,
} from '../../shared/safety/index.ts';

const pounds = fromPounds;
const ounces = (oz: number) => fromPounds(oz / 16);

describe('ingoing nitrite', () => {
  it('of 0.75 % in 50 lb of cure, pumped at 20 % from 462.1875 lb of pickle, is 162.3 ppm', () => {
    const nitriteKg = kilograms(pounds(50) * 0.0075);
    expect(pumpedPpm({ nitriteKg, pump: 0.2, pickleKg: pounds(462.1875) })).toBeCloseTo(162.3, 1);
  });

  it('of 5.88 % in 32 g of cure, pumped at 10 % from 1266 g of pickle, is 148.6 ppm', () => {
    const nitriteKg = kilograms(0.032 * 0.0588);
    expect(pumpedPpm({ nitriteKg, pump: 0.1, pickleKg: kilograms(1.266) })).toBeCloseTo(148.6, 1);
  });

  it('of 3 oz of 6.25 % cure in 8.33 lb of pickle at 10 % is 140.7 ppm', () => {
    const nitriteKg = kilograms(ounces(3) * CURE_STRENGTH);
    expect(pumpedPpm({ nitriteKg, pump: 0.1, pickleKg: pounds(8.33) })).toBeCloseTo(140.7, 1);
  });

  it('of 1 oz rubbed on 100 lb is 625 ppm, of a quarter of it ground in 156.25 ppm', () => {
    expect(rubbedPpm({ nitriteKg: ounces(1), greenKg: pounds(100) })).toBeCloseTo(625, 6);
    expect(rubbedPpm({ nitriteKg: ounces(0.25), greenKg: pounds(100) })).toBeCloseTo(156.25, 6);
  });
});

describe('the most nitrite', () => {
  it.each<[CureMethod, number]>([
    ['comminuted', 156],
    ['pumped or immersed', 200],
    ['dry', 625],
    ['bacon, pumped', 120],
    ['bacon, immersed', 120],
    ['bacon, dry', 200],
  ])('of %s meat is %d ppm', (method, ppm) => {
    expect(judgeNitrite(foodCode, { method, ppm }).ok).toBe(true);
    expect(judgeNitrite(foodCode, { method, ppm: ppm + 0.1 })).toMatchObject({
      ok: false,
      row: { method },
      limit: { value: ppm, unit: 'ppm' },
      correctiveActions: ['weigh-anew', 'discard'],
    });
  });
});

describe('the least nitrite', () => {
  it('of cured meat that is kept chilled is 120 ppm (p. 12)', () => {
    expect(judgeNitrite(foodCode, { method: 'dry', ppm: 120 }).ok).toBe(true);
    expect(judgeNitrite(foodCode, { method: 'dry', ppm: 119 })).toMatchObject({
      ok: false,
      row: { id: 'nitrite-at-least' },
    });
  });
});

/** Derived: ppm / 62.5. */
describe('cure of 6.25 % for a kilogram of meat', () => {
  it.each([
    [120, 1.92],
    [156, 2.5],
    [200, 3.2],
  ])('for %d ppm is %d g', (ppm, grams) => {
    expect(cureGramsPerKg(ppm)).toBeCloseTo(grams, 2);
  });
});
