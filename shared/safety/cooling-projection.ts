import type { Celsius, Seconds } from '../kernel/index.ts';
import { seconds } from '../kernel/index.ts';
import type { Cooling } from './cooling.ts';
import { tooLong } from './judgement.ts';
import type { PrintedTemp } from './printed.ts';
import { celsiusOf, secondsOf } from './printed.ts';
import type { Series } from './readings.ts';
import type { LimitOf } from './row-schema.ts';

/** A stage of a cooling that is still to come. */
export type ExpectedStage = {
  readonly to: PrintedTemp;
  /** When it must be reached at the latest. */
  readonly dueS: Seconds;
  /** When it will be if all goes on as it does; null if never, in air that is no colder. */
  readonly expectedS: Seconds | null;
  readonly inTime: boolean;
};

/**
 * Readings of this long tell how fast food cools now (our choice). The centre of a thick piece lags
 * at first, and what it did then says little.
 */
const LOOK_BACK_S = 2700;

/**
 * When an open cooling will reach its stages, by Newton's law of cooling in air of `airC`: the
 * distance to the air falls by the same share in each hour, which is fitted to the latest readings.
 * Null while they do not tell.
 */
export function projectCooling(
  readings: Series,
  { startS, stages }: Cooling,
  { limit, airC }: { readonly limit: LimitOf<'cooling'>; readonly airC: Celsius },
): ExpectedStage[] | null {
  const last = readings.at(-1);
  const latest = readings.filter(
    ({ atS, tempC }) => atS >= startS && atS >= (last?.atS ?? 0) - LOOK_BACK_S && tempC > airC,
  );
  const perS = coolingRatePerS(latest, airC);
  if (last === undefined || perS === null) return null;
  return limit.stages.flatMap(({ to, within }, index) => {
    if (stages[index]?.tookS !== null) return [];
    const ratio = (last.tempC - airC) / (celsiusOf(to) - airC);
    const isReached = perS > 0 && ratio > 0 && last.tempC > airC && celsiusOf(to) > airC;
    const expectedS = isReached ? seconds(last.atS + Math.log(ratio) / perS) : null;
    const inTime = expectedS !== null && tooLong(within, seconds(expectedS - startS)) === null;
    return [{ to, dueS: seconds(startS + secondsOf(within)), expectedS, inTime }];
  });
}

/**
 * Newton's rate by least squares on the logarithm of the distance to the air; null from one
 * reading.
 */
function coolingRatePerS(readings: Series, airC: Celsius): number | null {
  const count = readings.length;
  if (count < 2) return null;
  const points = readings.map(({ atS, tempC }) => ({ t: atS, y: Math.log(tempC - airC) }));
  const mean = (pick: (point: { t: number; y: number }) => number) =>
    points.reduce((sum, point) => sum + pick(point), 0) / count;
  const [meanT, meanY] = [mean(({ t }) => t), mean(({ y }) => y)];
  const covariance = mean(({ t, y }) => (t - meanT) * (y - meanY));
  return -covariance / mean(({ t }) => (t - meanT) ** 2);
}
