import { describe, expect, it } from 'vitest';
import { type Composition, meatProperties } from '../../shared/cook/meat.ts';
import { celsius } from '../../shared/kernel/index.ts';

/**
 * Choi and Okos 1986, "Effects of temperature and composition on the thermal properties of
 * foods".
 */
const pure = (name: keyof Composition): Composition => ({
  ...{ water: 0, protein: 0, fat: 0, ash: 0, carbohydrate: 0 },
  [name]: 1,
});

describe('the components of meat at 20 °C', () => {
  it.each([
    ['water', 4176.57, 995.74, 0.603659],
    ['protein', 2031.85, 1319.532, 0.201639],
    ['fat', 2011.75, 917.239, 0.175118],
    ['ash', 1128.92, 2418.187, 0.356479],
  ] as const)('%s', (name, capacity, density, conductivity) => {
    const found = meatProperties(pure(name), celsius(20));
    expect(found.heatCapacityJPerKgK).toBeCloseTo(capacity, 1);
    expect(found.densityKgPerM3).toBeCloseTo(density, 2);
    expect(found.conductivityWPerMK).toBeCloseTo(conductivity, 5);
  });
});

describe('meat mixed of them', () => {
  // Reckoned by hand from the polynomials: cp = 3.04890 + 0.42669 + 0.10059 + 0.01129 kJ/kgK.
  it('lean, at 20 °C', () => {
    const lean = { water: 0.73, protein: 0.21, fat: 0.05, ash: 0.01 };
    const found = meatProperties(lean, celsius(20));
    expect(found.heatCapacityJPerKgK).toBeCloseTo(3587.5, 1);
    expect(found.densityKgPerM3).toBeCloseTo(1051.62, 2);
    expect(found.conductivityWPerMK).toBeCloseTo(0.51073, 5);
    const diffusivity = found.conductivityWPerMK / found.heatCapacityJPerKgK / found.densityKgPerM3;
    expect(diffusivity * 1e7).toBeCloseTo(1.3538, 3);
  });

  // "Meat refrigeration" (James and James), table 13.2, kJ/kgK; of the rest it prints nothing.
  it.each([
    ['lean beef, 72 % water', { water: 0.72, protein: 0.21, fat: 0.06, ash: 0.01 }, 3.43],
    ['fatty beef, 51 % water', { water: 0.51, protein: 0.16, fat: 0.32, ash: 0.01 }, 2.89],
    ['lean pork, 57 % water', { water: 0.57, protein: 0.16, fat: 0.26, ash: 0.01 }, 3.06],
  ])('%s takes up heat as measured, within 8 %%', (_, composition, measured) => {
    const found = meatProperties(composition, celsius(20)).heatCapacityJPerKgK / 1000;
    expect(Math.abs(found / measured - 1)).toBeLessThan(0.08);
  });

  it('counts shares by their sum, since food tables round', () => {
    const whole = { water: 0.66, protein: 0.186, fat: 0.1506, ash: 0.0079 };
    const found = meatProperties(whole, celsius(60)).heatCapacityJPerKgK;
    expect(Math.abs(found / 3455 - 1)).toBeLessThan(0.006);
  });
});
