/**
 * The Food Safety and Hygiene (England) Regulations 2013, SI 2013/2996, Schedule 4: paragraph 2 as
 * made (primary); paragraphs 5 to 7 read in their twins for Wales, SI 2006/31 (W. 5), and for
 * Northern Ireland, SR 2006/3 (secondary copies). Cooking: 70 °C for 2 min and its equals, UK Food
 * Standards Agency advice as repeated on training pages (secondary copy). Cooling in 90 min and 5
 * °C: common practice, no source.
 */
import { describe, expect, it } from 'vitest';
import { celsius, hours, seconds } from '../../shared/kernel/index.ts';
import {
  celsiusCode,
  judgeColdHold,
  judgeEndTemperature,
  judgeHotHold,
  judgeTimeControl,
  lethalityOf,
  lookupOf,
  neededS,
  safetyOf,
  tables,
} from '../../shared/safety/index.ts';

describe('chill holding, paragraph 2', () => {
  it('is at 8 °C or below', () => {
    expect(judgeColdHold(celsiusCode, { coreC: celsius(8) }).ok).toBe(true);
    expect(judgeColdHold(celsiusCode, { coreC: celsius(8.1) }).ok).toBe(false);
  });

  it('warns above 5 °C, the temperature to aim at, and refuses nothing there', () => {
    expect(judgeColdHold(celsiusCode, { coreC: celsius(5) })).toEqual({ ok: true, warnings: [] });
    expect(judgeColdHold(celsiusCode, { coreC: celsius(6) })).toMatchObject({
      ok: true,
      warnings: [{ row: { id: 'cold-hold-aim', sure: 'common practice' } }],
    });
  });
});

describe('hot holding, paragraph 6', () => {
  it('is at 63 °C or above', () => {
    expect(judgeHotHold(celsiusCode, { coreC: celsius(63) }).ok).toBe(true);
    expect(judgeHotHold(celsiusCode, { coreC: celsius(62.9) }).ok).toBe(false);
  });
});

describe('on show, paragraphs 5 and 7', () => {
  const shown = (row: string, startC: number, elapsedH: number) =>
    judgeTimeControl(celsiusCode, {
      row,
      startC: celsius(startC),
      warmestC: celsius(20),
      elapsedS: hours(elapsedH),
    }).ok;

  it('is 4 h from cold and 2 h from hot', () => {
    expect([shown('time-control-cold', 8, 3.9), shown('time-control-cold', 8, 4.1)]).toEqual([
      true,
      false,
    ]);
    expect([shown('time-control-hot', 63, 1.9), shown('time-control-hot', 63, 2.1)]).toEqual([
      true,
      false,
    ]);
  });
});

describe('70 °C for 2 min and its equals', () => {
  it.each([
    [60, 45 * 60],
    [65, 10 * 60],
    [70, 2 * 60],
    [75, 30],
    [80, 6],
  ])('has %d °C for %d s', (tempC, timeS) => {
    const ended = (heldS: number) =>
      judgeEndTemperature(celsiusCode, {
        kind: 'ground',
        coreC: celsius(tempC),
        heldS: seconds(heldS),
      });
    expect([ended(timeS).ok, ended(timeS - 1).ok]).toEqual([true, false]);
    expect(neededS(lookupOf(tables['celsius-6-log']), tempC)).toBeCloseTo(timeS, 6);
  });

  // The law (z = 7.5 °C, six kills in 2 min at 70 °C) is from memory.
  it('are six tenfold kills or more by the law behind them', () => {
    for (const [tempC, timeS] of [
      [60, 2700],
      [65, 600],
      [70, 120],
      [75, 30],
      [80, 6],
    ] as const) {
      const held = [0, timeS].map((atS) => ({ atS: seconds(atS), tempC: celsius(tempC) }));
      const { logs } = lethalityOf(held, [tables['celsius-6-log']], { apartAtMostS: 2700 });
      expect(logs).toBeGreaterThan(5.9999);
    }
  });
});

describe('cooling, common practice', () => {
  it('is from 63 to 8 °C in 90 min', () => {
    const cooled = (minutes: number) => {
      const temps = [63, 45, 30, 20, 12, 8];
      const readings = temps.map((tempC, index) => ({
        atS: seconds((index * minutes * 60) / 5),
        tempC: celsius(tempC),
      }));
      return safetyOf(readings, 'ground', celsiusCode).cooling.met;
    };
    expect([cooled(45), cooled(95)]).toEqual([true, false]);
  });
});
