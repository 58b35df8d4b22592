import type { Celsius, Seconds } from '../kernel/index.ts';
import { celsius, seconds } from '../kernel/index.ts';
import type { TempUnit } from './printed.ts';
import { degrees } from './printed.ts';

/** One temperature of one probe. `atS` counts from any origin, the same for a whole series. */
export type Reading = { readonly atS: Seconds; readonly tempC: Celsius };
/** What one probe read, each reading later than the one before. */
export type Series = readonly Reading[];

/**
 * What a probe in food can show (common practice, no source): meat in a kitchen is neither far
 * below frozen nor above boiling water.
 */
export const plausibleCoreC = { low: celsius(-30), high: celsius(105) } as const;

/** The stretch between two readings, in the unit of the limit it is held against. */
export type Stretch = {
  readonly fromS: number;
  readonly toS: number;
  readonly from: number;
  readonly to: number;
  /** Longer than readings may lie apart: nobody knows what was in between. */
  readonly silent: boolean;
};

/**
 * How readings are to be looked at: in which unit, moved by how much, and when two lie too far
 * apart.
 */
export type Lens = {
  readonly unit: TempUnit;
  /** Degrees of `unit` added to each reading: the instrument's error, on the side of caution. */
  readonly shift: number;
  readonly apartAtMostS: number;
};

/** The stretches of a series, in order. */
export function* stretchesOf(
  readings: Series,
  { unit, shift, apartAtMostS }: Lens,
): Generator<Stretch> {
  let before: { readonly atS: number; readonly temp: number } | null = null;
  for (const { atS, tempC } of readings) {
    const temp = degrees(unit, tempC) + shift;
    if (before !== null) {
      const silent = atS - before.atS > apartAtMostS;
      yield { fromS: before.atS, toS: atS, from: before.temp, to: temp, silent };
    }
    before = { atS, temp };
  }
}

/**
 * The lowest of several probes at each moment at which all of them read: the coldest point counts,
 * and a mean of it with others never. Between readings the straight line is taken, which lies on
 * the side of caution.
 */
export function coldestOf(probes: readonly Series[]): Series {
  return extremeOf(probes, Math.min);
}

/** The highest of several probes, which counts where food is to cool. */
export function warmestOf(probes: readonly Series[]): Series {
  return extremeOf(probes, Math.max);
}

function extremeOf(probes: readonly Series[], pick: (...temps: number[]) => number): Series {
  const [only] = probes;
  if (only !== undefined && probes.length === 1) return only;
  const begins = Math.max(...probes.map((series) => series[0]?.atS ?? Number.POSITIVE_INFINITY));
  const ends = Math.min(...probes.map((series) => series.at(-1)?.atS ?? Number.NEGATIVE_INFINITY));
  const times = new Set(probes.flatMap((series) => series.map(({ atS }) => atS)));
  const moments = [...times].filter((atS) => begins <= atS && atS <= ends).sort((a, b) => a - b);
  const lines = probes.map(straightLine);
  return moments.map((atS) => ({ atS, tempC: celsius(pick(...lines.map((line) => line(atS)))) }));
}

/** A series as a function of time, to be asked with rising times between its first and last. */
function straightLine(series: Series): (atS: number) => number {
  let index = 0;
  return (atS) => {
    while ((series[index + 1]?.atS ?? Number.POSITIVE_INFINITY) <= atS) index++;
    const [before, after] = [series[index], series[index + 1]];
    if (before === undefined) return Number.NaN;
    if (after === undefined) return before.tempC;
    const share = (atS - before.atS) / (after.atS - before.atS);
    return before.tempC + (after.tempC - before.tempC) * share;
  };
}

/** The highest temperature of a series; NaN where nothing was read. */
export function highestC(readings: Series): Celsius {
  const highest = readings.reduce(
    (max, { tempC }) => Math.max(max, tempC),
    Number.NEGATIVE_INFINITY,
  );
  return celsius(readings.length === 0 ? Number.NaN : highest);
}

/**
 * The longest unbroken stay at or above a level. The lower of two neighbouring readings counts, and
 * of a silence no more than readings may lie apart.
 */
export function longestStayS(readings: Series, level: number, lens: Lens): Seconds {
  let stay = 0;
  let longest = 0;
  for (const { fromS, toS, from, to } of stretchesOf(readings, lens)) {
    const counted = Math.min(toS - fromS, lens.apartAtMostS);
    stay = Math.min(from, to) >= level ? stay + counted : 0;
    longest = Math.max(longest, stay);
  }
  return seconds(longest);
}
