import { assert } from '../kernel/index.ts';
import type { Law, LethalityTable, Lookup } from './lethality-table.ts';
import { killingS, lookupOf, neededS } from './lethality-table.ts';
import { amountOf, degreesIn, secondsOf } from './printed.ts';
import type { Series, Stretch } from './readings.ts';
import { stretchesOf } from './readings.ts';

export type Lethality = {
  /** Tenfold kills by the law of the table, or by its rows where it has none. */
  readonly logs: number;
  readonly neededLogs: number;
  /** Of the time the table asks for, the share of the longest unbroken stay; 1 is enough. */
  readonly dwell: number;
  /** Whether it was once so hot that the table asks for no time. */
  readonly wasInstant: boolean;
  /** When both the table and the sum of kill were satisfied for the first time. */
  readonly metAtS: number | null;
};

/** A stay that is summed from many readings comes out short by less than this. */
const ROUNDING = 1e-9;

/** A fitted D has four digits; a kill that is short by less than the last of them is not short. */
const DIGITS_OF_D = 1e-4;

/**
 * What heat has done to the coldest point, held against one table or the longest of several: once
 * by its printed rows, between which time is interpolated in its logarithm, and once by the
 * integral of kill. Both must be satisfied. Nothing counts below the lowest printed row.
 *
 * Along a straight line between two readings the integral is exact. A trapezoid would over-estimate
 * it on a rise. Of a longer silence only `apartAtMostS` counts, at the lower reading.
 */
export function lethalityOf(
  readings: Series,
  tables: readonly LethalityTable[],
  { errorK = 0, apartAtMostS }: { readonly errorK?: number; readonly apartAtMostS: number },
): Lethality {
  const { unit, lowest, instantFrom, neededLogs, neededAtS, killed } = killerOf(tables);
  const lens = { unit, shift: -degreesIn(unit, errorK), apartAtMostS };
  let [logs, stay, dwell]: [number, number, number] = [0, 0, 0];
  let wasInstant = false;
  let metAtS: number | null = null;
  for (const stretch of stretchesOf(readings, lens)) {
    const { fromS, toS, from, to } = stretch;
    const low = Math.min(from, to);
    const counted = Math.min(toS - fromS, apartAtMostS);
    logs += killed(stretch, counted);
    wasInstant ||= Math.max(from, to) >= instantFrom;
    if (dwell < 1) {
      stay = low < lowest ? 0 : stay + counted / neededAtS(low);
      dwell = wasInstant || stay >= 1 - ROUNDING ? 1 : Math.max(dwell, stay);
    }
    if (dwell === 1 && logs >= neededLogs * (1 - DIGITS_OF_D)) metAtS ??= toS;
  }
  return { logs, neededLogs, dwell, wasInstant, metAtS };
}

/** The table, or the slowest of several at each temperature, as functions of temperature. */
function killerOf(tables: readonly LethalityTable[]) {
  const lookups = tables.map(lookupOf);
  const [first] = lookups;
  assert(first !== undefined, 'a lethality table');
  assert(
    lookups.every(({ unit, logs }) => unit === first.unit && logs === first.logs),
    'tables of one unit and one aim',
  );
  const slowest = (time: (lookup: Lookup, temp: number) => number) => (temp: number) =>
    lookups.length === 1
      ? time(first, temp)
      : Math.max(...lookups.map((lookup) => time(lookup, temp)));
  const lowest = Math.max(...lookups.map((lookup) => lookup.lowest));
  const law = tables.length === 1 ? tables[0]?.law : undefined;
  return {
    unit: first.unit,
    neededLogs: first.logs,
    lowest,
    instantFrom: Math.max(...lookups.map(({ instantFrom }) => instantFrom)),
    neededAtS: slowest(neededS),
    killed: law === undefined ? byRows(first.logs, slowest(killingS)) : byLaw(law, lowest),
  };
}

type Killed = (stretch: Stretch, countedS: number) => number;

/** Kill by the rows of a table: the lower of two readings speaks for the stretch between them. */
function byRows(logs: number, killsInS: (temp: number) => number): Killed {
  return ({ from, to }, countedS) => (logs * countedS) / killsInS(Math.min(from, to));
}

/**
 * Kill by a law: exact along the straight line between two readings, above the lowest printed row.
 */
function byLaw({ reference, zDegrees, d }: Law, lowest: number): Killed {
  const [at, dS, perDegree] = [amountOf(reference).value, secondsOf(d), Math.LN10 / zDegrees];
  const logsPerS = (temp: number) => Math.exp((temp - at) * perDegree) / dS;
  return ({ from, to, silent }, countedS) => {
    const [low, high] = from < to ? [from, to] : [to, from];
    if (silent || high === low) return low < lowest ? 0 : logsPerS(low) * countedS;
    if (high <= lowest) return 0;
    const bottom = Math.max(low, lowest);
    const rise = (high - bottom) * perDegree;
    const share = (high - bottom) / (high - low);
    return (logsPerS(bottom) * countedS * share * Math.expm1(rise)) / rise;
  };
}
