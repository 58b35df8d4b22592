import { AirCurve } from '../../../shared/cook/air-curve.ts';
import { CookRun } from '../../../shared/cook/cook-run.ts';
import type { Body } from '../../../shared/cook/heat-model.ts';
import { SEA_LEVEL_PA } from '../../../shared/cook/moist-air.ts';
import type { Drying, Surroundings } from '../../../shared/cook/surface.ts';

/** Convection alone, into still, dry, steady air: what textbooks solve. */
export const convection = (filmWPerM2K: number): Surroundings => ({
  filmWPerM2K,
  emissivity: 0,
  wallsBelowAirK: 0,
  vapourPa: 0,
  pressurePa: SEA_LEVEL_PA,
  wrapM2KPerW: 0,
  wrapPasses: 0,
});

/** A surface that gives nothing off. */
export const sealed: Drying = {
  wetness: 0,
  stockKgPerM2: 0,
  halfKgPerM2: 1,
  juiceKgPerM2: 0,
  seepKgPerM2RootS: 0,
};

export type PlainCook = {
  readonly body: Body;
  readonly around: Surroundings;
  readonly airC: number;
  readonly drying?: Drying;
};

/** Runs it with the grid and the steps of the product; the run holds what came of it. */
export function runPlain(cook: PlainCook, timeS: number, run = new CookRun()): CookRun {
  const { body, around, airC, drying = sealed } = cook;
  const air = new AirCurve([{ atS: 0, tempC: airC }]);
  const drift = { fromS: 0, k: 0 };
  const stages = [{ from: { by: 'time', atS: 0 } as const, around, air, warmerK: 0, drift }];
  const found = run.run({ body, drying, weightKgPerM2: 1, probeDepth: 0, stages }, timeS);
  if (!found) throw new Error('the run found no balance');
  return run;
}

/** θ of the product's model at the core, and at the surface. */
export function modelTheta(
  shape: number,
  biot: number,
  fourier: number,
): { core: number; surface: number } {
  // L, k and the heat capacity are one, so a second is L²/α and the film is the Biot number.
  const body = {
    halfThicknessM: 1,
    shape,
    conductivityWPerMK: 1,
    heatCapacityJPerM3K: 1,
    startC: 1,
  };
  const { model } = runPlain({ body, around: convection(biot), airC: 0 }, fourier);
  return { core: model.depthC(0), surface: model.surfaceC };
}
