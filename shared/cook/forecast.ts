import { assimilate } from './assimilate.ts';
import { type Fault, faultsOf } from './faults.ts';
import { finish, type Job, jobOf } from './job.ts';
import type { Piece, Reading, Smoker } from './piece.ts';
import { Scene } from './scene.ts';
import { type Forecast, type ForecastOptions, horizon, tell, type Weighed } from './tell.ts';

export type Forecasting =
  | { readonly ok: true; readonly forecast: Forecast }
  | { readonly ok: false; readonly faults: readonly Fault[] };

const MEMBERS = 80;

/**
 * When a piece comes to each of its targets, from physics and from what was read so far: an
 * ensemble of pieces, each like this one as far as anybody knows. Seconds count from when it went
 * in. The same input has the same forecast. Nothing is computed from what cannot be.
 */
export function forecast(
  piece: Piece,
  smoker: Smoker,
  readings: readonly Reading[],
  options: ForecastOptions,
): Forecasting {
  return finish(forecasting(piece, smoker, readings, options));
}

/** The same as work that can be put down after each run of a member, some tens of microseconds. */
export function beginForecast(
  piece: Piece,
  smoker: Smoker,
  readings: readonly Reading[],
  options: ForecastOptions,
): Job<Forecasting> {
  return jobOf(forecasting(piece, smoker, readings, options));
}

function* forecasting(
  piece: Piece,
  smoker: Smoker,
  readings: readonly Reading[],
  options: ForecastOptions,
): Generator<void, Forecasting> {
  const found = yield* weighing(piece, smoker, readings, options);
  return found.ok ? { ok: true, forecast: tell(found.weighed) } : found;
}

/** An ensemble brought to the readings, its members all counting alike. */
export type Weighing =
  | { readonly ok: true; readonly weighed: Weighed }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** The work that a forecast is, with the ensemble that it comes from. */
export function* weighing(
  piece: Piece,
  smoker: Smoker,
  readings: readonly Reading[],
  options: ForecastOptions,
): Generator<void, Weighing> {
  const { nowS, seed, members = MEMBERS } = options;
  const faults = faultsOf(piece, smoker, readings, nowS);
  if (faults.length > 0) return { ok: false, faults };
  const scene = new Scene(piece, smoker, options);
  const ensemble = yield* assimilate(scene, readings, { seed, members, ...horizon(nowS) });
  if (ensemble === undefined) return { ok: false, faults: [{ rule: 'no-balance', members }] };
  const weights = ensemble.passagesS.map(() => 1);
  return { ok: true, weighed: { scene, ensemble, weights, readings, options } };
}
