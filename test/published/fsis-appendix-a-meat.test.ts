/**
 * FSIS Cooking Guideline for Meat and Poultry Products (Revised Appendix A), FSIS-GD-2021-14, 14
 * December 2021: Table 2 (p. 35), Table 6 (p. 59). Primary: read from the page images. The law and
 * the ramps are derived from it here and say so.
 */
import { describe, expect, it } from 'vitest';
import { minutes, seconds } from '../../shared/kernel/index.ts';
import {
  foodCode,
  lethalityOf,
  lookupOf,
  neededS,
  safetyOf,
  tables,
} from '../../shared/safety/index.ts';
import { curveF, heldF } from '../shared/safety/series.ts';

/** °F, 6.5-log, 7-log, 5-log; minutes to 145 °F, seconds from 146 °F on. */
const printed = [
  [130, 112, 121, 86],
  [131, 89, 97, 69],
  [132, 71, 77, 55],
  [133, 56, 62, 44],
  [134, 45, 47, 35],
  [135, 36, 37, 28],
  [136, 28, 32, 22],
  [137, 23, 24, 18],
  [138, 18, 19, 14],
  [139, 15, 15, 11],
  [140, 12, 12, 9],
  [141, 9, 10, 7],
  [142, 8, 8, 6],
  [143, 6, 6, 5],
  [144, 5, 5, 4],
  [145, 4, 4, 3],
  [146, 169, 182, 130],
  [147, 134, 144, 103],
  [148, 107, 115, 82],
  [149, 85, 91, 65],
  [150, 67, 72, 52],
  [151, 54, 58, 41],
  [152, 43, 46, 33],
  [153, 34, 37, 26],
  [154, 27, 29, 21],
  [155, 22, 23, 17],
  [156, 17, 19, 14],
  [157, 14, 15, 11],
] as const;

const columns = [
  { table: tables['fsis-6.5-log'], column: 1 },
  { table: tables['fsis-7-log'], column: 2 },
  { table: tables['fsis-5-log'], column: 3 },
] as const;

const printedS = (tempF: number, figure: number) => (tempF <= 145 ? figure * 60 : figure);
/** A capped sample of ten minutes, as the delivered profile has it. */
const apart = { apartAtMostS: minutes(10) };

describe.each(columns)('the $table.logs-log column for meat', ({ table, column }) => {
  it.each(printed)('asks at %d °F for what is printed', (tempF, ...figures) => {
    const asked = neededS(lookupOf(table), tempF);
    expect(asked).toBeCloseTo(printedS(tempF, figures[column - 1] ?? 0), 6);
  });

  it('asks for no time from 158 °F on', () => {
    expect([158, 159, 160, 203].map((tempF) => neededS(lookupOf(table), tempF))).toEqual([
      0, 0, 0, 0,
    ]);
  });

  it('credits nothing below 130 °F', () => {
    expect(neededS(lookupOf(table), 129.9)).toBe(Number.POSITIVE_INFINITY);
  });

  it('is read between two rows in the logarithm of time', () => {
    const [low, high] = [printed[1][column] * 60, printed[2][column] * 60];
    expect(neededS(lookupOf(table), 131.5)).toBeCloseTo(Math.sqrt(low * high), 6);
  });
});

describe('the time printed in the 6.5-log column', () => {
  it.each(printed)(
    'at %d °F is enough for whole meat, and a second less is not',
    (tempF, figure) => {
      const stayMin = printedS(tempF, figure) / 60;
      expect(safetyOf(heldF(tempF, stayMin), 'roast', foodCode).dwell_met).toBe(true);
      expect(safetyOf(heldF(tempF, stayMin - 1 / 60), 'roast', foodCode).dwell_met).toBe(false);
    },
  );
});

describe('the time printed in the 5-log column', () => {
  it.each(printed)('at %d °F is enough for injected meat', (tempF, ...figures) => {
    const stayMin = printedS(tempF, figures[2]) / 60;
    expect(safetyOf(heldF(tempF, stayMin), 'injected', foodCode).dwell_met).toBe(true);
    expect(safetyOf(heldF(tempF, stayMin - 1 / 60), 'injected', foodCode).dwell_met).toBe(false);
  });
});

/**
 * Derived: t = L · D150 · 10^((150 − T)/10) with D150 = 0.1715 min, rounded up to the printed unit.
 */
describe('the law behind the columns', () => {
  const byLaw = (logs: number, tempF: number) => {
    const lawS = logs * 0.1715 * 60 * 10 ** ((150 - tempF) / 10);
    const inPrintedUnit = tempF <= 145 ? lawS / 60 : lawS;
    return Math.ceil(Math.round(inPrintedUnit * 100) / 100);
  };
  const misses = (logs: number, column: 1 | 2 | 3) =>
    printed.filter((row) => byLaw(logs, row[0]) !== row[column]).map(([tempF]) => tempF);

  it('gives back every row of the 6.5-log column', () => {
    expect(misses(6.5, 1)).toEqual([]);
  });

  it('gives back all but two rows of the 5-log column, which ask for more', () => {
    expect(misses(5, 3)).toEqual([133, 156]);
  });

  it('does not give back the 7-log column, which is therefore kept as a table', () => {
    expect(misses(7, 2)).toHaveLength(12);
  });
});

/** Derived in closed form: F = z/(r ln 10) · [10^((T2−150)/z) − 10^((T1−150)/z)], log = F/D150. */
describe('the integral of kill', () => {
  const table = [tables['fsis-6.5-log']];

  it('of 66.885 s at 150 °F is 6.5 tenfold kills', () => {
    expect(lethalityOf(heldF(150, 66.885 / 60), table, apart).logs).toBeCloseTo(6.5, 9);
  });

  it.each([1, 5, 10])(
    'of a ramp from 130 to 145 °F at 0.25 °F a minute, read every %d min, is 31.02',
    (stepMin) => {
      const ramp = curveF((minute) => 130 + 0.25 * minute, { minutes: 60, stepMin });
      const { logs } = lethalityOf(ramp, table, apart);
      expect(logs * 0.1715).toBeCloseTo(5.3197, 4);
      expect(logs).toBeCloseTo(31.02, 2);
    },
  );

  it('of the same ramp read every 20 min stays below it, where a trapezoid gives 5.8947', () => {
    const ramp = curveF((minute) => 130 + 0.25 * minute, { minutes: 60, stepMin: 20 });
    const { logs } = lethalityOf(ramp, table, apart);
    expect(logs * 0.1715).toBeLessThan(5.3197);
  });

  it('rules over a printed 7-log row that stands for less than 7', () => {
    // 139 °F prints 15 min; at D150 = 0.1715 min that is 6.95 tenfold kills.
    const kill = lethalityOf(heldF(139, 15), [tables['fsis-7-log']], apart);
    expect(kill.dwell).toBe(1);
    expect(kill.logs).toBeLessThan(7);
    expect(kill.metAtS).toBeNull();
  });

  it('yields to the printed row where that asks for more', () => {
    // 133 °F prints 44 min in the 5-log column, and the law is content with 43.
    const kill = lethalityOf(heldF(133, 43.5), [tables['fsis-5-log']], apart);
    expect(kill.logs).toBeGreaterThan(5);
    expect(kill.metAtS).toBeNull();
    const kept = lethalityOf(heldF(133, 44), [tables['fsis-5-log']], apart);
    expect(kept.metAtS).toBe(seconds(44 * 60));
  });
});
