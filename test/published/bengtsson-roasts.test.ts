import { describe, expect, it } from 'vitest';
import { vapourPressurePa } from '../../shared/cook/moist-air.ts';
import { type PlainCook, runPlain } from '../shared/cook/plain-cook.ts';

/**
 * Bengtsson, Jakobsson and Dagerskog 1976, "Cooking of beef by oven roasting" (abstract):
 * semimembranosus roasted at 175 and 225 °C. At 225 °C heating time was shorter and yield lower;
 * the surface stayed wet, at a temperature that the oven's wet bulb sets, until the core was at
 * 65 to 70 °C.
 */
describe('beef roasted at 175 and 225 °C', () => {
  const roast = (airC: number, humidityRatio = 0.02): PlainCook => ({
    body: {
      halfThicknessM: 0.03,
      shape: 0.8,
      conductivityWPerMK: 0.53,
      heatCapacityJPerM3K: 3.6e6,
      startC: 5,
    },
    around: {
      filmWPerM2K: 9,
      emissivity: 0.75,
      wallsBelowAirK: 0,
      vapourPa: vapourPressurePa(humidityRatio),
      pressurePa: 101_325,
      wrapM2KPerW: 0,
      wrapPasses: 1,
    },
    airC,
    drying: {
      wetness: 0.35,
      stockKgPerM2: 1,
      halfKgPerM2: 0.25,
      juiceKgPerM2: 4,
      seepKgPerM2RootS: 0.014,
    },
  });
  const doneAt = (cook: PlainCook, coreC: number) => {
    const run = runPlain(cook, 5 * 3600);
    const index = run.coresC.findIndex((tempC) => tempC >= coreC);
    return {
      timeS: run.timesS[index] ?? Number.NaN,
      surfaceC: run.surfacesC[index] ?? Number.NaN,
      vapoured: run.vapouredKgPerM2[index] ?? Number.NaN,
    };
  };

  it('takes less time in the hotter oven', () => {
    expect(doneAt(roast(225), 70).timeS).toBeLessThan(0.85 * doneAt(roast(175), 70).timeS);
  });

  it('has a surface far below the air while it is wet, colder in drier air', () => {
    const { surfaceC } = doneAt(roast(175), 40);
    expect(surfaceC).toBeLessThan(100);
    expect(doneAt(roast(175, 0.15), 40).surfaceC).toBeGreaterThan(surfaceC + 1);
  });
});
