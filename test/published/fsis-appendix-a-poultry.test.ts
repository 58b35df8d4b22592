/**
 * FSIS Cooking Guideline for Meat and Poultry Products (Revised Appendix A), FSIS-GD-2021-14, 14
 * December 2021: Table 3 (p. 37, chicken) and Table 4 (p. 38, turkey), 7 tenfold kills. Primary:
 * read from the page images. That unknown fat takes the 12 % column, and another bird the longer
 * table, is from p. 39.
 */
import { describe, expect, it } from 'vitest';
import { foodCode, lookupOf, neededS, safetyOf, tables } from '../../shared/safety/index.ts';
import { heldF } from '../shared/safety/series.ts';

/**
 * °F, then chicken at 1, 5 and 12 % fat and turkey at 1, 5 and 12 %; minutes, or seconds where
 * said.
 */
const printed = `
136  63.3  68.4  81.4  64    65.3  70.8
138  39.7  43.2  52.9  42.2  43.4  48.5
140  25.2  27.5  35    28.1  29    33.7
142  16.1  17.6  23.5  18.9  19.5  23.7
144  10.4  11.4  15.9  12.8  13.2  16.6
145  8.4   9.2   13    10.5  10.8  13.8
146  6.8   7.4   10.6  8.7   8.9   11.5
148  4.4   4.7   6.8   5.8   5.9   7.7
150  2.7   2.8   4.2   3.8   3.7   4.9
152  1.5   1.6   2.3   2.3   2.3   2.8
154  55.9s 1     1.1   1.5   1.5   1.6
155  44.2s 47.7s 54.4s 1.2   1.2   1.3
156  35s   37.7s 43s   59s   1     1
158  21.9s 23.6s 26.9s 38.8s 39.6s 40.9s
160  13.7s 14.8s 16.9s 25.6s 26.1s 26.9s
161  10.8s 11.7s 13.3s 20.8s 21.2s 21.9s
162  0     0     10.5s 16.9s 17.2s 17.7s
164  0     0     0     11.1s 11.3s 11.7s
165  0     0     0     0     0     0`
  .trim()
  .split('\n')
  .map((line) => line.trim().split(/\s+/));

const columns = [
  { table: 'fsis-chicken-1-percent', kind: 'chicken', fatPercent: 1, column: 1 },
  { table: 'fsis-chicken-5-percent', kind: 'chicken', fatPercent: 5, column: 2 },
  { table: 'fsis-chicken-12-percent', kind: 'chicken', fatPercent: 12, column: 3 },
  { table: 'fsis-turkey-1-percent', kind: 'turkey', fatPercent: 1, column: 4 },
  { table: 'fsis-turkey-5-percent', kind: 'turkey', fatPercent: 5, column: 5 },
  { table: 'fsis-turkey-12-percent', kind: 'turkey', fatPercent: 12, column: 6 },
] as const;

const inSeconds = (text = '') =>
  text.endsWith('s') ? Number(text.slice(0, -1)) : Number(text) * 60;

describe.each(columns)('the $table column', ({ table, kind, fatPercent, column }) => {
  const rows = printed.map((cells) => [Number(cells[0]), inSeconds(cells[column])] as const);

  it.each(rows)('asks at %d °F for %d s', (tempF, timeS) => {
    expect(neededS(lookupOf(tables[table]), tempF)).toBeCloseTo(timeS, 6);
  });

  it.each(rows.filter(([, timeS]) => timeS > 0))('at %d °F is met after %d s', (tempF, timeS) => {
    const stay = (s: number) => safetyOf(heldF(tempF, s / 60), kind, foodCode, { fatPercent });
    expect(stay(timeS)).toMatchObject({ dwell_met: true });
    expect(stay(timeS - 0.1)).toMatchObject({ dwell_met: false });
  });

  it('lends 7 tenfold kills for its time', () => {
    const [tempF = 0, timeS = 0] = rows[2] ?? [];
    const { lethality_log } = safetyOf(heldF(tempF, timeS / 60), kind, foodCode, { fatPercent });
    expect(lethality_log).toBeCloseTo(7, 9);
  });
});

describe('fat that is not known', () => {
  it.each(['chicken', 'turkey'] as const)('of %s takes the 12 % column', (kind) => {
    const unknown = safetyOf(heldF(140, 34), kind, foodCode);
    expect(unknown).toEqual(safetyOf(heldF(140, 34), kind, foodCode, { fatPercent: 12 }));
    expect(unknown.dwell_met).toBe(kind === 'turkey');
  });

  it('above 12 % takes the 12 % column too, and 3 % the one for 5 %', () => {
    const at = (fatPercent: number) =>
      safetyOf(heldF(140, 20), 'chicken', foodCode, { fatPercent });
    expect(at(20).dwell_share).toBeCloseTo(20 / 35, 9);
    expect(at(3).dwell_share).toBeCloseTo(20 / 27.5, 9);
  });
});

describe('a bird that is neither, or not known to be one', () => {
  it('takes the longer of the two tables at each temperature', () => {
    // At 140 °F chicken asks for more (35 over 33.7 min), at 145 °F turkey (13.8 over 13 min).
    expect(safetyOf(heldF(140, 10), 'poultry', foodCode).dwell_share).toBeCloseTo(10 / 35, 9);
    expect(safetyOf(heldF(145, 10), 'poultry', foodCode).dwell_share).toBeCloseTo(10 / 13.8, 9);
  });
});

describe('between two rows', () => {
  it('time is interpolated in its logarithm, since z changes along the column', () => {
    const at = (tempF: number) => neededS(lookupOf(tables['fsis-chicken-12-percent']), tempF);
    expect(at(141)).toBeCloseTo(60 * Math.sqrt(35 * 23.5), 6);
  });

  it('the column for beef is another one', () => {
    expect(safetyOf(heldF(145, 4), 'chicken', foodCode).dwell_met).toBe(false);
    expect(safetyOf(heldF(145, 4), 'roast', foodCode).dwell_met).toBe(true);
  });
});
