import { type Celsius, celsius, must, type Seconds, seconds } from '../kernel/index.ts';
import type { Ensemble } from './assimilate.ts';
import { type Message, messageBetween, partOf } from './belief.ts';
import { calibrated, isKnown, type Outcome, type Raw, rawOf } from './calibration.ts';
import { CookRun } from './cook-run.ts';
import type { Reading, Target } from './piece.ts';
import { quantilesOf, type Weighted, weightOf } from './quantiles.ts';
import { shownS } from './readings.ts';
import type { Wrap, WrapName } from './rooms.ts';
import type { Scene } from './scene.ts';
import { sharedPart } from './shared-part.ts';
import { readAt } from './trace.ts';

/** Goes up with every change after which the same input has another forecast. */
export const MODEL_VERSION = 3;

export type ForecastOptions = {
  readonly nowS: Seconds;
  readonly seed: number;
  /** Eighty where nothing is said, forty at least. */
  readonly members?: number;
  /** The kitchen's own paper and foil, in place of the usual. */
  readonly wraps?: Partial<Readonly<Record<WrapName, Wrap>>>;
  /** How the kitchen's earlier forecasts came out. */
  readonly outcomes?: readonly Outcome[];
};

/** When a target is passed: in one of ten cases before P10, in one of ten after P90. */
export type TargetForecast = Target & {
  /** Nothing where so many never pass it. */
  readonly p10S: Seconds | undefined;
  readonly p50S: Seconds | undefined;
  readonly p90S: Seconds | undefined;
  /** Twenty times, one as likely as the other; nothing for never. */
  readonly equallyLikelyS: readonly (Seconds | undefined)[];
  /** The chance that it is never passed at this fire. */
  readonly never: number;
  /** How much of the doubt is about its smoker and fire, which others in it have in common; 0–1. */
  readonly ofSmoker: number;
  /** Before any calibration, for the kitchen's record. */
  readonly raw: Raw | undefined;
};

export type CurvePoint = {
  readonly atS: Seconds;
  readonly coreC: Celsius;
  readonly surfaceC: Celsius;
  /** Of the weight it went in with. */
  readonly evaporatedShare: number;
};

export type FanPoint = {
  readonly atS: Seconds;
  readonly p10C: Celsius;
  readonly p50C: Celsius;
  readonly p90C: Celsius;
};

export type Forecast = {
  readonly modelVersion: number;
  readonly seed: number;
  readonly lastReadingS: Seconds | undefined;
  readonly targets: readonly TargetForecast[];
  /** The cook of the member in the middle, from the beginning on. */
  readonly curve: readonly CurvePoint[];
  /** What the thermometer may show from now on. */
  readonly fan: readonly FanPoint[];
  /** False as long as the kitchen has too few finished cooks: "not yet calibrated here". */
  readonly isCalibrated: boolean;
  readonly members: number;
  /** Members that found no balance or no end; they count for nothing. */
  readonly leftOut: number;
  /** What the readings say of each smoker, for the other pieces in it. */
  readonly saysOfSmokers: readonly { readonly id: string; readonly message: Message }[];
};

const RANGE = [0.1, 0.5, 0.9];
const TWENTIETHS = Array.from({ length: 20 }, (_, i) => (i + 0.5) / 20);

/** A member that has not come so far so long from now never will, as far as a day is concerned. */
const HORIZON_S = 36 * 3600;
const FAN_EVERY_S = 900;
const CURVE_EVERY_S = 600;

/** How far to draw where the last target is never passed. */
const DRAWN_S = 12 * 3600;

/** When members are given up, and when what they show is noted. */
export const horizon = (nowS: number) => ({
  endS: nowS + HORIZON_S,
  timesS: everyS(nowS, nowS + HORIZON_S, FAN_EVERY_S),
});

/** An ensemble whose members count as `weights` say, with what it was asked. */
export type Weighed = {
  readonly scene: Scene;
  readonly ensemble: Ensemble;
  readonly weights: readonly number[];
  readonly readings: readonly Reading[];
  readonly options: ForecastOptions;
};

/** What an ensemble says of the targets, and what there is to draw. */
export function tell({ scene, ensemble, weights, readings, options }: Weighed): Forecast {
  const { nowS, seed, outcomes = [] } = options;
  const { piece } = scene;
  const wrap = piece.stays.find((stay) => stay.wrap !== 'none')?.wrap ?? 'none';
  const ofSmokers = ensemble.rows.map((row, j) => [
    ...row.slice(scene.placeOf(0)),
    ensemble.strays[j] ?? 0,
  ]);
  const targets = piece.targets.map((target, index) => {
    const passages = ensemble.passagesS.map((row, j) => ({
      value: row[index] ?? Number.POSITIVE_INFINITY,
      weight: must(weights[j], 'a weight'),
    }));
    const isShown = shownS(target, readings) !== undefined;
    const values = isShown ? passages : calibrated(passages, { nowS, target, wrap, outcomes });
    const ofSmoker = sharedPart(
      passages.map(({ value }) => value),
      ofSmokers,
    );
    return targetForecast(target, values, { ofSmoker, raw: rawOf(passages) });
  });
  const lastS = Math.max(nowS, ...targets.map(({ p90S }) => p90S ?? nowS + DRAWN_S));
  const shown = readings.map(({ atS }) => atS);
  return {
    ...{ modelVersion: MODEL_VERSION, seed, targets },
    lastReadingS: shown.length > 0 ? seconds(Math.max(...shown)) : undefined,
    curve: curveOf(scene, middleOf(ensemble, weights), lastS),
    fan: fanOf(ensemble, weights, { timesS: horizon(nowS).timesS, endS: lastS }),
    isCalibrated: isKnown(outcomes),
    members: ensemble.passagesS.length,
    leftOut: ensemble.leftOut,
    saysOfSmokers: scene.smokers.map(({ id }, index) => ({
      id,
      message: saysOf(ensemble, scene.placeOf(index), scene.placeOf(index + 1)),
    })),
  };
}

/** The unknowns of the member in the middle. */
function middleOf({ rows, after }: Ensemble, weights: readonly number[]): readonly number[] {
  if (weights.every((weight) => weight === 1)) return after.mean;
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  return after.mean.map(
    (_, i) => rows.reduce((sum, row, j) => sum + (row[i] ?? 0) * (weights[j] ?? 0), 0) / whole,
  );
}

function targetForecast(
  target: Target,
  values: readonly Weighted[],
  { ofSmoker, raw }: Pick<TargetForecast, 'ofSmoker' | 'raw'>,
): TargetForecast {
  const [p10S, p50S, p90S] = quantilesOf(values, RANGE).map(wholeSeconds);
  return {
    ...{ ...target, p10S, p50S, p90S },
    equallyLikelyS: quantilesOf(values, TWENTIETHS).map(wholeSeconds),
    never: weightOf(values.filter(({ value }) => !Number.isFinite(value))) / weightOf(values),
    ofSmoker,
    raw,
  };
}

const wholeSeconds = (value: number) =>
  Number.isFinite(value) ? seconds(Math.round(value)) : undefined;

function saysOf({ before, after, passagesS }: Ensemble, from: number, to: number): Message {
  return messageBetween(partOf(before, from, to), partOf(after, from, to), passagesS.length);
}

/** The member in the middle, with no error of its own and no fire that strays. */
function curveOf(scene: Scene, middle: readonly number[], endS: number): CurvePoint[] {
  const run = new CookRun();
  const cook = scene.cook(middle, 0);
  run.run(cook, endS);
  const timesS = everyS(0, endS, CURVE_EVERY_S);
  const cores = readAt(run, run.coresC, timesS);
  const surfaces = readAt(run, run.surfacesC, timesS);
  const gone = readAt(run, run.vapouredKgPerM2, timesS);
  return timesS.map((atS, i) => ({
    atS: seconds(atS),
    coreC: celsius(must(cores[i], 'a core')),
    surfaceC: celsius(must(surfaces[i], 'a surface')),
    evaporatedShare: must(gone[i], 'what is gone') / cook.weightKgPerM2,
  }));
}

/** A member that has passed its last target stays as it is. */
function fanOf(
  { showsC }: Ensemble,
  weights: readonly number[],
  { timesS, endS }: { readonly timesS: readonly number[]; readonly endS: number },
): FanPoint[] {
  return timesS
    .filter((timeS) => timeS <= endS + FAN_EVERY_S)
    .map((atS, index) => {
      const temps = showsC.map((row, j) => ({
        value: row[index] ?? Number.NaN,
        weight: must(weights[j], 'a weight'),
      }));
      const [p10C = Number.NaN, p50C = Number.NaN, p90C = Number.NaN] = quantilesOf(temps, RANGE);
      return {
        atS: seconds(atS),
        ...{ p10C: celsius(p10C), p50C: celsius(p50C), p90C: celsius(p90C) },
      };
    });
}

function everyS(fromS: number, toS: number, stepS: number): number[] {
  return Array.from({ length: Math.floor((toS - fromS) / stepS) + 1 }, (_, i) => fromS + i * stepS);
}
