import { describe, expect, it } from 'vitest';
import {
  latentHeatJPerKg,
  SEA_LEVEL_PA,
  vapourPressurePa,
} from '../../../shared/cook/moist-air.ts';
import { convection, modelTheta, type PlainCook, runPlain, sealed } from './plain-cook.ts';
import { bodies, exponentOf, theta } from './series.ts';

const shoulder: PlainCook = {
  body: {
    halfThicknessM: 0.05,
    shape: 1,
    conductivityWPerMK: 0.494,
    heatCapacityJPerM3K: 3.47e6,
    startC: 5,
  },
  around: {
    filmWPerM2K: 9.5,
    emissivity: 0.7,
    wallsBelowAirK: 5,
    vapourPa: vapourPressurePa(0.06),
    pressurePa: SEA_LEVEL_PA,
    wrapM2KPerW: 0,
    wrapPasses: 1,
  },
  airC: 110,
  drying: {
    wetness: 0.35,
    stockKgPerM2: 1.8,
    halfKgPerM2: 0.45,
    juiceKgPerM2: 9,
    seepKgPerM2RootS: 0.012,
  },
};

const foil = { wrapM2KPerW: 1 / 60, wrapPasses: 0.02, emissivity: 0.08 };

describe('conduction, at the grid and the steps of the product', () => {
  const cases = bodies.flatMap((body) => [0.1, 0.3, 1, 3, 10].map((biot) => ({ body, biot })));

  it.each(cases)('is within 0.002 of the series for a $body at Bi $biot', ({ body, biot }) => {
    for (const fourier of [0.05, 0.07, 0.1, 0.2, 0.5, 1, 2, 5]) {
      const model = modelTheta(exponentOf(body), biot, fourier);
      expect(Math.abs(model.core - theta(body, biot, fourier))).toBeLessThan(2e-3);
      expect(Math.abs(model.surface - theta(body, biot, fourier, 1))).toBeLessThan(2e-3);
    }
  });

  it('lies between slab, cylinder and sphere for the shapes between them', () => {
    const at = (shape: number) => modelTheta(shape, 1, 0.5).core;
    expect(at(0.5)).toBeLessThan(at(0));
    expect(at(1)).toBeLessThan(at(0.5));
    expect(at(1.5)).toBeLessThan(at(1));
    expect(at(2)).toBeLessThan(at(1.5));
  });
});

describe('the heat that arrives', () => {
  const storedJPerM2 = (cook: PlainCook, meanC: number) => {
    const { halfThicknessM, shape, heatCapacityJPerM3K, startC } = cook.body;
    return ((heatCapacityJPerM3K * halfThicknessM) / (shape + 1)) * (meanC - startC);
  };

  it.each([
    ['bare', shoulder],
    ['in foil', { ...shoulder, around: { ...shoulder.around, ...foil } }],
    ['cooling', { ...shoulder, airC: 4, body: { ...shoulder.body, startC: 90 } }],
  ])('is stored or goes off as vapour, to a millionth: %s', (_, cook) => {
    const { model } = runPlain(cook, 12 * 3600);
    const stored = storedJPerM2(cook, model.meanC());
    const vapour = model.arrivedJPerM2 - model.intoMeatJPerM2;
    const scale = Math.abs(stored) + Math.abs(vapour);
    expect(Math.abs(model.intoMeatJPerM2 - stored) / scale).toBeLessThan(1e-6);
    // Vapour carries its latent heat: between that at the coldest and at the hottest the surface
    // was.
    const latent = [5, 110].map((tempC) => latentHeatJPerKg(tempC) * model.vapouredKgPerM2);
    expect(vapour).toBeGreaterThan(Math.min(...latent));
    expect(vapour).toBeLessThan(Math.max(...latent));
  });
});

describe('the water of a piece', () => {
  const drying = shoulder.drying ?? sealed;

  it('is on the surface, gone off or dripped, and never more there than it can hold', () => {
    for (const around of [shoulder.around, { ...shoulder.around, ...foil }]) {
      const { model } = runPlain({ ...shoulder, around }, 12 * 3600);
      const came =
        drying.juiceKgPerM2 * model.pressedShare + drying.seepKgPerM2RootS * Math.sqrt(12 * 3600);
      const held = drying.stockKgPerM2 + came - model.vapouredKgPerM2 - model.drippedKgPerM2;
      expect(held).toBeGreaterThan(-1e-3);
      expect(held).toBeLessThan(drying.stockKgPerM2 + 1e-9);
    }
  });

  it('goes off from bare meat, and drips in foil', () => {
    const bare = runPlain(shoulder, 12 * 3600).model;
    const wrapped = runPlain({ ...shoulder, around: { ...shoulder.around, ...foil } }, 12 * 3600);
    expect(bare.vapouredKgPerM2).toBeGreaterThan(5 * bare.drippedKgPerM2);
    expect(wrapped.model.drippedKgPerM2).toBeGreaterThan(5 * wrapped.model.vapouredKgPerM2);
  });

  it('that heat has pressed out does not go back as the meat cools', () => {
    const { model } = runPlain(shoulder, 6 * 3600);
    const hot = model.pressedShare;
    model.meet({ ...shoulder.around, vapourPa: 600 });
    for (let timeS = 0; timeS < 24 * 3600; timeS += 300) model.step(300, 5, 5);
    expect(model.depthC(0)).toBeLessThan(20);
    expect(model.pressedShare).toBeGreaterThanOrEqual(hot);
  });

  it('comes back as dew on cold meat in moist air', () => {
    const { model } = runPlain(shoulder, 300);
    expect(model.vapouredKgPerM2).toBeLessThan(0);
  });
});

describe('a cook', () => {
  const hoursTo = (cook: PlainCook, coreC: number) => {
    const run = runPlain(cook, 30 * 3600);
    const index = run.coresC.findIndex((tempC) => tempC >= coreC);
    return (run.timesS[index] ?? Number.NaN) / 3600;
  };

  const ratesKPerH = (cook: PlainCook) => {
    const rate = (fromC: number, toC: number) =>
      (toC - fromC) / (hoursTo(cook, toC) - hoursTo(cook, fromC));
    return { early: rate(35, 50), between: rate(62, 70), late: rate(76, 84) };
  };

  it('stalls: a bare shoulder slows down in between, and goes on by itself', () => {
    const { early, between, late } = ratesKPerH(shoulder);
    expect(between).toBeLessThan(early / 3);
    expect(between).toBeLessThan(late / 2);
  });

  it('does not stall where nothing can evaporate', () => {
    const { between, late } = ratesKPerH({
      ...shoulder,
      around: { ...shoulder.around, wrapPasses: 0 },
    });
    expect(between).toBeGreaterThan(late);
  });

  it('goes on faster in foil', () => {
    const wrapped = { ...shoulder, around: { ...shoulder.around, ...foil } };
    expect(hoursTo(wrapped, 96)).toBeLessThan(hoursTo(shoulder, 96));
  });

  it('is faster in a hotter smoker, and never hotter inside than out', () => {
    const hours = [105, 110, 115, 120, 130].map((airC) => hoursTo({ ...shoulder, airC }, 90));
    expect(hours).toEqual([...hours].sort((a, b) => b - a));
    const run = runPlain(shoulder, 30 * 3600);
    for (let i = 0; i < run.length; i++) {
      expect(run.coresC[i]).toBeLessThan(110);
    }
  });

  it('ends at the temperature of air and walls, if nothing evaporates', () => {
    const around = { ...convection(9.5), emissivity: 0.9 };
    const { model } = runPlain({ ...shoulder, around, airC: 110 }, 200 * 3600);
    expect(model.depthC(0)).toBeCloseTo(110, 4);
    expect(model.surfaceC).toBeCloseTo(110, 4);
  });

  it('of a small body is the slow exponential of one temperature', () => {
    // Bi = 0.001, so that to a thousandth the inside follows the surface, T∞ - T = (T∞ -
    // T0)·exp(-h·A·t/(ρ·c·V)).
    const body = { ...shoulder.body, halfThicknessM: 0.005, conductivityWPerMK: 50 };
    const { model } = runPlain({ ...shoulder, body, around: convection(10) }, 1800);
    const rate = (10 * 2) / (body.heatCapacityJPerM3K * 0.005);
    expect(Math.abs(model.depthC(0) - (110 - 105 * Math.exp(-rate * 1800)))).toBeLessThan(0.105);
  });

  it('comes out the same with steps a tenth as long', () => {
    const run = runPlain(shoulder, 12 * 3600);
    const fine = runPlain(shoulder, 0).model;
    fine.begin(shoulder.body, shoulder.drying ?? sealed);
    fine.meet(shoulder.around);
    for (let timeS = 0; timeS < 12 * 3600; timeS += 30) fine.step(30, 110, 110);
    expect(run.model.depthC(0)).toBeCloseTo(fine.depthC(0), 1);
    expect(run.model.vapouredKgPerM2).toBeCloseTo(fine.vapouredKgPerM2, 1);
  });
});
