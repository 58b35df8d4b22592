import { describe, expect, it } from 'vitest';
import { bodies, exponentOf, theta } from './series.ts';
import { cookSpent, MINUTE_S, type SpentPiece } from './spent-surface.ts';

const piece: SpentPiece = {
  halfThicknessM: 0.05,
  shape: 1,
  densityKgPerM3: 1018,
  heatCapacityJPerKgK: 3410,
  conductivityWPerMK: 0.463,
  conductivityPerK: 0.0019,
  startC: 5,
  wetness: 0.2,
  spentKgPerM2: 4,
  sharpness: 7,
  drawsTogether: 0.08,
  probeDepth: 0.05,
};
const smoker = { filmWPerM2K: 9.5, emissivity: 0.7, wallsBelowAirK: 5, vapourPa: 8000 };
const steady = (airC: number) => ({ smoker, airC: () => airC, wrap: () => undefined });

describe('the other law that forecasts are tried on', () => {
  it.each(bodies)('is the series too where nothing evaporates, for a %s', (body) => {
    const plain: SpentPiece = {
      ...piece,
      shape: exponentOf(body),
      conductivityPerK: 0,
      wetness: 0,
      drawsTogether: 0,
      probeDepth: 0,
    };
    const dry = { filmWPerM2K: 18.52, emissivity: 0, wallsBelowAirK: 0, vapourPa: 0 };
    // Bi = h·L/k = 2.
    const { coresC } = cookSpent({ ...steady(110), piece: plain, smoker: dry }, 109, 20);
    const unitS = (1018 * 3410 * 0.05 ** 2) / 0.463;
    for (const hour of [1, 2, 4]) {
      const fourier = (hour * 3600) / unitS;
      const exact = 110 - 105 * theta(body, 2, fourier);
      expect(Math.abs((coresC[(hour * 3600) / MINUTE_S] ?? 0) - exact)).toBeLessThan(0.7);
    }
  });

  it('stalls as well, and ends sooner in foil and in a hotter smoker', () => {
    const hours = (airC: number, contactWPerM2K?: number) => {
      const foil = { contactWPerM2K: contactWPerM2K ?? 0, passes: 0.02, emissivity: 0.3 };
      const wrap = (coreC: number) => (contactWPerM2K && coreC > 66 ? foil : undefined);
      return cookSpent({ ...steady(airC), piece, wrap }, 96).coresC.length / 60;
    };
    const { coresC } = cookSpent({ ...steady(110), piece }, 96);
    const rise = (hour: number) => (coresC[60 * hour + 60] ?? 0) - (coresC[60 * hour] ?? 0);
    expect(rise(4)).toBeLessThan(rise(1) / 3);
    expect(rise(4)).toBeLessThan(rise(7));
    expect(hours(120)).toBeLessThan(hours(110));
    expect(hours(110, 80)).toBeLessThan(hours(110));
  });
});
