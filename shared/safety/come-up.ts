import type { Seconds } from '../kernel/index.ts';
import { seconds } from '../kernel/index.ts';
import type { Amount, TempUnit } from './printed.ts';
import { amountOf, degreesIn } from './printed.ts';
import type { Series, Stretch } from './readings.ts';
import { stretchesOf } from './readings.ts';
import type { LimitOf } from './row-schema.ts';

/** The time a piece spent where toxin can form, from cold to hot. */
export type ComeUp = {
  readonly tookS: Seconds;
  /** The readings begin after the piece was already warm: it took longer than is known. */
  readonly begunBefore: boolean;
};

/**
 * The time between the two temperatures of the come-up row, until lethality is met. A cook that is
 * interrupted goes on counting: only a full cook sets the clock back. Null where the readings begin
 * when the piece is already hot.
 *
 * The instrument's error widens the band on both sides, and a silence that touches it counts whole.
 */
export function comeUpOf(
  readings: Series,
  { from, to }: LimitOf<'come-up'>,
  {
    errorK = 0,
    apartAtMostS,
    untilS = null,
  }: {
    readonly errorK?: number;
    readonly apartAtMostS: number;
    readonly untilS?: number | null;
  },
): ComeUp | null {
  const [cold, hot] = [amountOf(from), amountOf(to)];
  const band = widened(cold, hot, errorK);
  const lens = { unit: cold.unit, shift: 0, apartAtMostS };
  let took = 0;
  let first: number | null = null;
  for (const stretch of stretchesOf(readings, lens)) {
    first ??= stretch.from;
    if (untilS === null || stretch.toS <= untilS) took += secondsWithin(stretch, band);
  }
  if (first === null || first >= band.high) return null;
  return { tookS: seconds(took), begunBefore: first > band.low };
}

type Band = { readonly low: number; readonly high: number };

function widened(cold: Amount<TempUnit>, hot: Amount<TempUnit>, errorK: number): Band {
  const error = degreesIn(cold.unit, errorK);
  return { low: cold.value - error, high: hot.value + error };
}

function secondsWithin({ fromS, toS, from, to, silent }: Stretch, { low, high }: Band): number {
  const [bottom, top] = from < to ? [from, to] : [to, from];
  if (silent) return top < low || bottom >= high ? 0 : toS - fromS;
  if (bottom === top) return low <= bottom && bottom < high ? toS - fromS : 0;
  const inside = Math.min(top, high) - Math.max(bottom, low);
  return inside > 0 ? ((toS - fromS) * inside) / (top - bottom) : 0;
}
