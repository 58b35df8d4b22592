import { describe, expect, it } from 'vitest';
import { convection, modelTheta, runPlain } from '../shared/cook/plain-cook.ts';
import { bodies, exponentOf, terms, theta } from '../shared/cook/series.ts';

/**
 * Incropera and DeWitt, "Fundamentals of Heat and Mass Transfer", ch. 5; from memory, and
 * reckoned anew. The book reads its one-term answers off a table, ours are held to the exact
 * series.
 */
describe('table 5.1: the first eigenvalue and its weight', () => {
  const table = [
    [0.01, [0.0998, 1.0017], [0.1412, 1.0025], [0.173, 1.003]],
    [0.1, [0.3111, 1.0161], [0.4417, 1.0246], [0.5423, 1.0298]],
    [0.5, [0.6533, 1.0701], [0.9408, 1.1143], [1.1656, 1.1441]],
    [1, [0.8603, 1.1191], [1.2558, 1.2071], [1.5708, 1.2732]],
    [5, [1.3138, 1.2402], [1.9898, 1.5029], [2.5704, 1.787]],
    [10, [1.4289, 1.262], [2.1795, 1.5677], [2.8363, 1.9249]],
    [100, [1.5552, 1.2731], [2.3809, 1.6015], [3.1102, 1.999]],
  ] as const;

  it.each(table)('at Bi %d', (biot, ...columns) => {
    for (const [index, body] of bodies.entries()) {
      const [zeta = 0, c = 0] = columns[index] ?? [];
      const [first] = terms(body, biot, 1);
      expect(Math.abs((first?.zeta ?? 0) - zeta)).toBeLessThan(1.1e-4);
      expect(Math.abs((first?.c ?? 0) - c)).toBeLessThan(1.1e-4);
    }
  });
});

describe('the ten-term series at the core', () => {
  it.each([
    [1, 0.5, 0.77253],
    [1, 0.1, 0.99311],
    [2, 0.5, 0.65962],
  ])('slab, Bi %d, Fo %d', (biot, fourier, exact) => {
    expect(theta('slab', biot, fourier)).toBeCloseTo(exact, 5);
    expect(modelTheta(exponentOf('slab'), biot, fourier).core).toBeCloseTo(exact, 2);
  });
});

describe('examples 5.4 and 5.5: the wall of a pipe of steel, hot oil let in', () => {
  // 40 mm, insulated outside; k 63.9, alpha 18.8e-6, h 500; -20 °C, oil of 60 °C; after 8 min.
  const { model } = runPlain(
    {
      body: {
        halfThicknessM: 0.04,
        shape: 0,
        conductivityWPerMK: 63.9,
        heatCapacityJPerM3K: 63.9 / 18.8e-6,
        startC: -20,
      },
      around: convection(500),
      airC: 60,
    },
    480,
  );

  it('comes to 42.9 °C outside in the book, exactly to 43.02', () => {
    expect(Math.abs(model.depthC(0) - 43.02)).toBeLessThan(0.1);
    expect(Math.abs(model.depthC(0) - 42.9)).toBeLessThan(0.2);
  });

  it('comes to 45.2 °C at the oil in the book, exactly to 45.36', () => {
    expect(Math.abs(model.surfaceC - 45.36)).toBeLessThan(0.1);
    expect(Math.abs(model.surfaceC - 45.2)).toBeLessThan(0.25);
  });
});

describe('example 5.1: the bead of a thermocouple in a hot gas', () => {
  // h 400, k 20, c 400, rho 8500; a time constant of 1 s needs a bead of 0.706 mm.
  const radiusM = 0.706e-3 / 2;

  it('comes from 25 to 199 °C in 5.2 s in gas of 200 °C', () => {
    const { model } = runPlain(
      {
        body: {
          halfThicknessM: radiusM,
          shape: 2,
          conductivityWPerMK: 20,
          heatCapacityJPerM3K: 8500 * 400,
          startC: 25,
        },
        around: convection(400),
        airC: 200,
      },
      5.165,
    );
    expect(Math.abs(model.depthC(0) - 199)).toBeLessThan(0.1);
  });
});

describe('example 5.6: how deep a water main freezes in 60 days', () => {
  // Soil of 20 °C, its surface at once at -15 °C, alpha 0.138e-6: 0 °C at 0.68 m.
  it('is 0.68 m, whatever lies below', () => {
    const depthM = 3;
    // The same in a soil a thousand times as quick, which takes a thousandth of the time.
    const run = runPlain(
      {
        body: {
          halfThicknessM: depthM,
          shape: 0,
          conductivityWPerMK: 1,
          heatCapacityJPerM3K: 1 / 0.138e-3,
          startC: 20,
        },
        around: convection(1e6),
        airC: -15,
      },
      60 * 86.4,
    );
    const frozenAt = (belowM: number) => run.model.depthC(1 - belowM / depthM);
    expect(frozenAt(0.62)).toBeLessThan(0);
    expect(frozenAt(0.74)).toBeGreaterThan(0);
  });
});
