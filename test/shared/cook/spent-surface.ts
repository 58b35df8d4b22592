import { saturationPressurePa } from '../../../shared/cook/moist-air.ts';
import { celsius } from '../../../shared/kernel/index.ts';

/**
 * Cooks by another law than the product's, for its forecasts to be tried on. Here nothing is
 * pressed out: a surface is wet and spends what it has, down to 1/(1 + (E/Ec)^n) of its wetness
 * after E kg/m²; meat conducts better as it warms, and draws together. Written apart from the
 * product's model, plainly: nodes in mid-cell, and a backward step of a minute that looks up its
 * coefficients in the minute before.
 */
export type SpentPiece = {
  readonly halfThicknessM: number;
  readonly shape: number;
  readonly densityKgPerM3: number;
  readonly heatCapacityJPerKgK: number;
  /** At 20 °C, and how much of that it gains per K. */
  readonly conductivityWPerMK: number;
  readonly conductivityPerK: number;
  readonly startC: number;
  readonly wetness: number;
  readonly spentKgPerM2: number;
  readonly sharpness: number;
  /** By how much of its thickness it draws together between 50 and 80 °C. */
  readonly drawsTogether: number;
  /** Where the thermometer sits, 0 at the core, 1 at the surface. */
  readonly probeDepth: number;
};

export type SpentSmoker = {
  readonly filmWPerM2K: number;
  readonly emissivity: number;
  readonly wallsBelowAirK: number;
  readonly vapourPa: number;
};

export type SpentWrap = {
  readonly contactWPerM2K: number;
  readonly passes: number;
  readonly emissivity: number;
};

export type SpentCook = {
  readonly piece: SpentPiece;
  readonly smoker: SpentSmoker;
  readonly airC: (timeS: number) => number;
  /** Asked every minute until it answers with a wrap. */
  readonly wrap: (coreC: number, timeS: number) => SpentWrap | undefined;
};

/** What the thermometer would have shown, minute by minute, and when it was wrapped. */
export type SpentCourse = {
  readonly coresC: readonly number[];
  readonly wrappedS: number | undefined;
};

const CELLS = 20;
export const MINUTE_S = 60;
const STEFAN_BOLTZMANN = 5.670374419e-8;
const KELVIN = 273.15;

const steam = Float64Array.from({ length: 2001 }, (_, i) => saturationPressurePa(celsius(i / 10)));
const steamPa = (tempC: number) =>
  steam[Math.round(Math.max(0, Math.min(tempC, 200)) * 10)] ?? Number.NaN;

/** Cooks until the thermometer shows `untilC`, or for so many hours. */
export function cookSpent(cook: SpentCook, untilC: number, mostH = 48): SpentCourse {
  const { piece, smoker } = cook;
  const temps = new Float64Array(CELLS).fill(piece.startC);
  const upper = new Float64Array(CELLS);
  const right = new Float64Array(CELLS);
  const p = piece.shape + 1;
  const face = (i: number) => i / CELLS;
  const volumes = Array.from({ length: CELLS }, (_, i) => (face(i + 1) ** p - face(i) ** p) / p);
  const areas = Array.from({ length: CELLS + 1 }, (_, i) => face(i) ** piece.shape);
  const probe = piece.probeDepth * CELLS - 0.5;

  let surfaceC = piece.startC;
  let spent = 0;
  let wrap: SpentWrap | undefined;
  let wrappedS: number | undefined;
  const coresC: number[] = [];
  for (let timeS = 0; ; timeS += MINUTE_S) {
    const below = Math.max(0, Math.min(Math.floor(probe), CELLS - 2));
    const share = Math.max(0, probe - below);
    const coreC = (temps[below] ?? 0) * (1 - share) + (temps[below + 1] ?? 0) * share;
    coresC.push(coreC);
    if (coreC >= untilC || timeS >= mostH * 3600) return { coresC, wrappedS };
    if (wrap === undefined) {
      wrap = cook.wrap(coreC, timeS);
      if (wrap !== undefined) wrappedS = timeS;
    }
    const halfM = piece.halfThicknessM * (1 - piece.drawsTogether * drawn(coreC));
    const heat = piece.densityKgPerM3 * piece.heatCapacityJPerKgK * halfM * halfM;
    const conducts = (tempC: number) =>
      piece.conductivityWPerMK * (1 + piece.conductivityPerK * (tempC - 20));
    const across = (i: number) => {
      const tempC = ((temps[i - 1] ?? 0) + (temps[i] ?? 0)) / 2;
      return ((MINUTE_S * conducts(tempC)) / heat) * (areas[i] ?? 0) * CELLS;
    };
    let pivot = 1;
    for (let i = 0; i < CELLS; i++) {
      const inward = i > 0 ? across(i) : 0;
      const outward = i < CELLS - 1 ? across(i + 1) : 0;
      pivot = (volumes[i] ?? 0) + inward + outward - inward * (upper[i - 1] ?? 0);
      upper[i] = outward / pivot;
      right[i] = ((volumes[i] ?? 0) * (temps[i] ?? 0) + inward * (right[i - 1] ?? 0)) / pivot;
    }
    const restC = right[CELLS - 1] ?? 0;
    const perFlux = (MINUTE_S * halfM) / heat / pivot;
    const riseM2KPerW = perFlux + halfM / (2 * CELLS * conducts(surfaceC));

    const airC = cook.airC(timeS + MINUTE_S);
    const wallsK = airC - smoker.wallsBelowAirK + KELVIN;
    const emissivity = wrap?.emissivity ?? smoker.emissivity;
    const meanK = (surfaceC + KELVIN + wallsK) / 2;
    const glow = 4 * emissivity * STEFAN_BOLTZMANN * meanK ** 3;
    const film = smoker.filmWPerM2K;
    const passing = 1 / (1 / (film + glow) + (wrap === undefined ? 0 : 1 / wrap.contactWPerM2K));
    const aroundC = (film * airC + glow * (wallsK - KELVIN)) / (film + glow);
    const wet = piece.wetness / (1 + (Math.max(spent, 0) / piece.spentKgPerM2) ** piece.sharpness);
    const passage = 6.79e-9 * film * wet * (wrap?.passes ?? 1);
    const latent = 2.501e6 - 2361 * surfaceC;
    for (let pass = 0; pass < 4; pass++) {
      const pull = 0.99 * steamPa(surfaceC) - smoker.vapourPa;
      const slope = (0.99 * (steamPa(surfaceC + 0.5) - steamPa(surfaceC - 0.5))) / 1;
      const gap = (surfaceC - restC) / riseM2KPerW - passing * (aroundC - surfaceC);
      surfaceC -=
        (gap + latent * passage * pull) / (1 / riseM2KPerW + passing + latent * passage * slope);
    }
    spent += MINUTE_S * passage * (0.99 * steamPa(surfaceC) - smoker.vapourPa);
    let temp = restC + (perFlux * (surfaceC - restC)) / riseM2KPerW;
    temps[CELLS - 1] = temp;
    for (let i = CELLS - 2; i >= 0; i--) {
      temp = (right[i] ?? 0) + (upper[i] ?? 0) * temp;
      temps[i] = temp;
    }
  }
}

const drawn = (coreC: number) => Math.max(0, Math.min((coreC - 50) / 30, 1));
