import { describe, expect, it } from 'vitest';
import { pressedShare } from '../../shared/cook/juice.ts';

/**
 * "Fluid content and tenderness of three muscles of beef cooked to three internal temperatures"
 * (J. Food Science 28, 1963; abstract): of the meat of roasts taken out at 140, 158 and 176 °F,
 * 69.7, 64.7 and 60.3 % was water.
 */
const measured = [
  { tempC: 60, water: 0.697 },
  { tempC: 70, water: 0.647 },
  { tempC: 80, water: 0.603 },
];

/** Of raw lean beef, in food tables. */
const RAW = 0.73;
const perDry = (water: number) => water / (1 - water);

describe('the water that beef has let go of', () => {
  it.each(measured)(
    'at $tempC °C is as measured, within a tenth of all it had',
    ({ tempC, water }) => {
      const share = 1 - perDry(water) / perDry(RAW);
      expect(Math.abs(pressedShare(tempC) - share)).toBeLessThan(0.1);
    },
  );

  it('rises with the temperature, most steeply in the sixties', () => {
    const gained = [45, 55, 65, 75, 85].map(
      (tempC) => pressedShare(tempC) - pressedShare(tempC - 10),
    );
    expect(Math.max(...gained)).toBe(gained[3]);
    expect(Math.min(...gained)).toBeGreaterThan(0);
  });

  /**
   * "Cooking loss kinetics" (Oillic and others 2011, Meat Science 88, abstract): depends on
   * temperature alone.
   */
  it('never exceeds what the equation leaves, 46 % of it', () => {
    expect(pressedShare(200)).toBeCloseTo(0.345 / 0.745, 9);
    expect(pressedShare(5)).toBeLessThan(1e-5);
  });
});
