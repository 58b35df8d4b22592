import type { Message } from './belief.ts';
import type { Fault } from './faults.ts';
import { weighing } from './forecast.ts';
import { finish } from './job.ts';
import type { Piece, Reading, Smoker } from './piece.ts';
import { type Forecast, type ForecastOptions, tell, type Weighed } from './tell.ts';

/** A forecast with its ensemble, for when others have more to say of its smokers. */
export type Kept = {
  readonly forecast: Forecast;
  readonly weighed: Weighed;
  /** What was heard of each smoker when the ensemble was brought to its readings. */
  readonly heard: readonly (readonly Message[])[];
};

export type Foreseeing =
  | { readonly ok: true; readonly kept: Kept }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * With less than so much of an ensemble's worth left it says too little, and is made anew.
 */
const WORTH = 0.5;

/** An ensemble older than this is of another hour of the cook. */
const OLD_S = 3600;

/**
 * The same as `forecast`, for one who keeps what it comes from. Where nothing is new but what
 * others say of its smokers (`before` is of the same piece and readings), no cook is run anew: each
 * member counts by how much likelier its smoker has become, which is Bayes's rule on what was
 * believed (importance sampling; Kong 1992 for the worth that is left, from memory).
 */
export function foreseeing(
  piece: Piece,
  smoker: Smoker,
  readings: readonly Reading[],
  { before, ...options }: ForecastOptions & { readonly before?: Kept | undefined },
): Foreseeing {
  const again = before && reheard(before, smoker, options);
  if (again) return { ok: true, kept: again };
  const found = finish(weighing(piece, smoker, readings, options));
  if (!found.ok) return found;
  const { weighed } = found;
  const heard = weighed.scene.smokers.map((each) => each.heard ?? []);
  return { ok: true, kept: { forecast: tell(weighed), weighed, heard } };
}

function reheard(before: Kept, smoker: Smoker, options: ForecastOptions): Kept | null {
  const { scene, ensemble, options: then } = before.weighed;
  if (options.nowS - then.nowS > OLD_S) return null;
  const place = scene.smokers.findIndex(({ id }) => id === smoker.id);
  const from = scene.placeOf(place);
  const likelier = ensemble.rows.map((row) => {
    const z = row.slice(from, scene.placeOf(place + 1));
    return likelihood(smoker.heard ?? [], z) - likelihood(before.heard[place] ?? [], z);
  });
  const most = Math.max(...likelier);
  const weights = likelier.map((log) => Math.exp(log - most));
  const sum = weights.reduce((all, weight) => all + weight, 0);
  const squares = weights.reduce((all, weight) => all + weight * weight, 0);
  if (!((sum * sum) / squares >= WORTH * weights.length)) return null;
  const outcomes = options.outcomes === undefined ? {} : { outcomes: options.outcomes };
  const weighed = { ...before.weighed, weights, options: { ...then, ...outcomes } };
  return { forecast: tell(weighed), weighed: before.weighed, heard: before.heard };
}

/** The logarithm of what messages say of some unknowns together, up to a constant. */
function likelihood(messages: readonly Message[], z: readonly number[]): number {
  return messages.reduce((all, { precision, pull }) => {
    const square = precision.reduce(
      (sum, row, i) => sum + (z[i] ?? 0) * row.reduce((s, p, j) => s + p * (z[j] ?? 0), 0),
      0,
    );
    return all - square / 2 + pull.reduce((sum, p, i) => sum + p * (z[i] ?? 0), 0);
  }, 0);
}
