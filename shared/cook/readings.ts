import { cholesky, type Matrix, solveCholesky, tabulate } from './matrix.ts';
import type { Reading, Target } from './piece.ts';
import type { Observed } from './smoother.ts';

/**
 * How the model errs beside its unknowns: what it leaves out moves the core by so much, and stays
 * for so long (judged from cooks made up by other laws). Without it a probe that reads every
 * minute would make the forecast surer than it has any right to be.
 */
export const MODEL_ERROR_K = 1.5;
export const MODEL_ERROR_LASTS_S = 5400;

/** Of a probe that stays in, and of a hand that pricks anew each time (judged). */
const SENSOR_ERROR_K = { probe: 0.5, hand: 1.5 } as const;

/** Readings closer than this tell nothing new. */
const APART_S = 1200;
const MOST = 24;

/**
 * The readings that count: in order of time, the latest always, thinned to what tells something.
 */
export function telling(readings: readonly Reading[]): Reading[] {
  const ordered = [...readings].sort((a, b) => b.atS - a.atS);
  const lengthS = (ordered[0]?.atS ?? 0) - (ordered.at(-1)?.atS ?? 0);
  const apartS = Math.max(APART_S, lengthS / (MOST - 1));
  const kept: Reading[] = [];
  for (const reading of ordered) {
    const later = kept.at(-1);
    if (later === undefined || later.atS - reading.atS >= apartS * 0.999) kept.push(reading);
  }
  return kept.reverse();
}

/** How much the model's error at one time has to do with that at another. */
const kept = (a: number, b: number) => Math.exp(-Math.abs(a - b) / MODEL_ERROR_LASTS_S);

/** The readings with all that may be wrong between them and the model. */
export function observedIn(readings: readonly Reading[]): Observed {
  return {
    tempsC: readings.map(({ tempC }) => tempC),
    covariance: covarianceOf(readings),
  };
}

function covarianceOf(readings: readonly Reading[]): Matrix {
  return tabulate(readings.length, readings.length, (i, j) => {
    const [a, b] = [readings[i], readings[j]];
    if (a === undefined || b === undefined) return 0;
    const sensor = i === j ? SENSOR_ERROR_K[a.by] ** 2 : 0;
    return MODEL_ERROR_K ** 2 * kept(a.atS, b.atS) + sensor;
  });
}

/** The model's own error at the last reading, as a normal one, given by how much it misses each. */
export type ErrorNow = (missedK: readonly number[]) => {
  readonly meanK: number;
  readonly sdK: number;
};

/** Kriging: what the misses say of the error at the last reading. */
export function errorAtLast(readings: readonly Reading[]): ErrorNow {
  const last = readings.at(-1);
  if (last === undefined) return () => ({ meanK: 0, sdK: MODEL_ERROR_K });
  const lower = cholesky(covarianceOf(readings));
  const shared = readings.map(({ atS }) => MODEL_ERROR_K ** 2 * kept(atS, last.atS));
  const weights = solveCholesky(lower, shared);
  const explained = weights.reduce((sum, weight, k) => sum + weight * (shared[k] ?? 0), 0);
  const sdK = Math.sqrt(Math.max(0, MODEL_ERROR_K ** 2 - explained));
  return (missedK) => ({
    meanK: weights.reduce((sum, weight, k) => sum + weight * (missedK[k] ?? 0), 0),
    sdK,
  });
}

/** When a reading first showed a target, if one did. */
export function shownS(target: Target, readings: readonly Reading[]): number | undefined {
  let wasAbove = false;
  for (const { atS, tempC } of [...readings].sort((a, b) => a.atS - b.atS)) {
    if (target.way === 'rising' ? tempC >= target.tempC : wasAbove && tempC <= target.tempC) {
      return atS;
    }
    wasAbove ||= tempC > target.tempC;
  }
  return undefined;
}
