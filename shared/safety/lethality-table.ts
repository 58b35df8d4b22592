import type { Amount, PrintedTemp, PrintedTime, TempUnit } from './printed.ts';
import { amountOf, secondsOf } from './printed.ts';

/**
 * The law behind a table: the time for one tenfold kill is `d` at the reference temperature and
 * falls tenfold with each `z` degrees more.
 */
export type Law = {
  readonly reference: PrintedTemp;
  readonly zDegrees: number;
  readonly d: PrintedTime;
  readonly source: string;
};

/** A printed lethality table: how long the coldest point must stay at each temperature. */
export type LethalityTable = {
  readonly section: string;
  readonly source: string;
  readonly edition: string;
  readonly sure: 'primary' | 'secondary copy' | 'from memory';
  /** Tenfold kills that each of its rows stands for. */
  readonly logs: number;
  readonly points: readonly (readonly [PrintedTemp, PrintedTime])[];
  /** Left out where no single law fits the rows. */
  readonly law?: Law;
};

/** A table made ready to be read between its rows. */
export type Lookup = {
  readonly unit: TempUnit;
  readonly logs: number;
  /** Below it no row is printed and nothing counts. */
  readonly lowest: number;
  /** From here on the table asks for no time. */
  readonly instantFrom: number;
  readonly temps: readonly number[];
  readonly lnTimesS: readonly number[];
};

/** Makes a table ready to be read between its rows; it must begin with its lowest temperature. */
export function lookupOf({ points, logs }: LethalityTable): Lookup {
  const rows = points.map(([temp, time]) => ({ temp: amountOf(temp), timeS: secondsOf(time) }));
  const timed = rows.filter(({ timeS }) => timeS > 0);
  const instant = rows.find(({ timeS }) => timeS === 0);
  const lowest: Amount<TempUnit> = rows[0]?.temp ?? { value: Number.POSITIVE_INFINITY, unit: '°F' };
  return {
    unit: lowest.unit,
    logs,
    lowest: lowest.value,
    instantFrom: instant?.temp.value ?? Number.POSITIVE_INFINITY,
    temps: timed.map(({ temp }) => temp.value),
    lnTimesS: timed.map(({ timeS }) => Math.log(timeS)),
  };
}

/**
 * How long the table asks for at `temp` (in its own unit): between two rows interpolated in the
 * logarithm of time, since kill is exponential in temperature. Infinite below the lowest row.
 * @example neededS(lookupOf(tables['fsis-6.5-log']), 130) //=> 6720
 */
export function neededS(lookup: Lookup, temp: number): number {
  return temp >= lookup.instantFrom ? 0 : killingS(lookup, temp);
}

/**
 * As `neededS`, but a row that asks for no time lends none: the last row with a time goes on. For
 * sums of kill, where a policy of "at once" must not count as endless.
 */
export function killingS({ temps, lnTimesS, lowest }: Lookup, temp: number): number {
  if (!(temp >= lowest)) return Number.POSITIVE_INFINITY;
  let above = 1;
  while ((temps[above] ?? Number.POSITIVE_INFINITY) <= temp) above++;
  if (above >= temps.length) return Math.exp(lnTimesS.at(-1) ?? Number.POSITIVE_INFINITY);
  const [low, high] = [temps[above - 1] ?? temp, temps[above] ?? temp];
  const [slow, fast] = [lnTimesS[above - 1] ?? 0, lnTimesS[above] ?? 0];
  return Math.exp(slow + ((fast - slow) * (temp - low)) / (high - low));
}
