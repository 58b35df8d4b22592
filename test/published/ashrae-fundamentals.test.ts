import { describe, expect, it } from 'vitest';
import { humidityRatio, saturationPressurePa } from '../../shared/cook/moist-air.ts';
import { celsius } from '../../shared/kernel/index.ts';

/**
 * ASHRAE Handbook, Fundamentals, chapter "Psychrometrics": tables 2 (moist air) and 3 (water at
 * saturation), standard pressure, as the tests of the R package `humidr` quote them.
 */
describe("ASHRAE's tables at 20 °C", () => {
  it('have this saturation pressure', () => {
    expect(saturationPressurePa(celsius(20)) / 2338.8).toBeCloseTo(1, 3);
  });

  it('have this humidity of saturated air, but for half a percent: vapour is no ideal gas', () => {
    const ratio = humidityRatio(saturationPressurePa(celsius(20)));
    expect(ratio / 0.014758).toBeGreaterThan(0.995);
    expect(ratio / 0.014758).toBeLessThan(1);
  });
});

describe('water boils', () => {
  it('at 100 °C under one atmosphere (by the old definition of both), within the fit', () => {
    expect(saturationPressurePa(celsius(100)) / 101_325).toBeCloseTo(1, 2);
  });

  it('and air over it holds vapour without end', () => {
    expect(humidityRatio(101_325)).toBe(Number.POSITIVE_INFINITY);
  });
});
