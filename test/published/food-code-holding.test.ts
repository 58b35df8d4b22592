/**
 * FDA Food Code, keeping food hot and cold, 3-202.11, 3-403.11, 3-501, and its instruments and
 * cleaning, 4-203, 4-602. Secondary copies: the 2022 text itself was not read, so each check names
 * the adoption it was read in.
 */
import { describe, expect, it } from 'vitest';
import { hours, minutes, seconds } from '../../shared/kernel/index.ts';
import {
  foodCode,
  judgeCleaning,
  judgeColdHold,
  judgeDateMark,
  judgeHotHold,
  judgeOutOfTemperature,
  judgeReceiving,
  judgeReheat,
  judgeThermometer,
  judgeTimeControl,
  lastDay,
  safetyOf,
  variancesOf,
} from '../../shared/safety/index.ts';
import { degF, throughF } from '../shared/safety/series.ts';

describe('holding, 3-501.16(A)', () => {
  // Wis. Admin. Code ATCP 75 (2020); Wash. Admin. Code 246-215-03525 (2022). Secondary copies.
  it('hot is 135 °F or above', () => {
    expect(judgeHotHold(foodCode, { coreC: degF(135) }).ok).toBe(true);
    expect(judgeHotHold(foodCode, { coreC: degF(134.9) }).ok).toBe(false);
  });

  it('hot is 130 °F or above for a roast that was cooked by the roast table', () => {
    expect(judgeHotHold(foodCode, { coreC: degF(130), byRoastTable: true }).ok).toBe(true);
    expect(judgeHotHold(foodCode, { coreC: degF(129.9), byRoastTable: true }).ok).toBe(false);
    expect(judgeHotHold(foodCode, { coreC: degF(130) }).ok).toBe(false);
  });

  it('cold is 41 °F or below', () => {
    expect(judgeColdHold(foodCode, { coreC: degF(41) }).ok).toBe(true);
    expect(judgeColdHold(foodCode, { coreC: degF(41.1) }).ok).toBe(false);
  });
});

describe('receiving, 3-202.11(A)', () => {
  // 2009 text as adopted in Wash. Admin. Code 246-215-03235 (2013); secondary copy.
  it('is at 41 °F or below', () => {
    expect(judgeReceiving(foodCode, { coreC: degF(41) }).ok).toBe(true);
    expect(judgeReceiving(foodCode, { coreC: degF(45) })).toMatchObject({
      ok: false,
      correctiveActions: ['reject-delivery'],
    });
  });
});

describe('cooling, 3-501.14(A)', () => {
  // Wis. Admin. Code ATCP 75 (2020); secondary copy.
  it.each([
    { first: 120, second: 360, met: true },
    { first: 121, second: 360, met: false },
    { first: 60, second: 360, met: true },
    { first: 60, second: 361, met: false },
  ])('to 70 °F in $first min and to 41 °F in $second min: $met', ({ first, second, met }) => {
    const readings = throughF([
      [0, 135],
      [first, 70],
      [second, 41],
    ]);
    expect(safetyOf(readings, 'roast', foodCode).cooling).toEqual({
      stage1_h: expect.closeTo(first / 60, 6),
      total_h: expect.closeTo(second / 60, 6),
      met,
      state: met ? 'met' : 'missed',
    });
  });
});

describe('reheating for hot holding, 3-403.11', () => {
  // As adopted in Delaware, South Carolina and Wisconsin; secondary copies.
  const reheated = (tempF: number, heldS: number, tookMin: number) =>
    judgeReheat(foodCode, {
      way: 'oven',
      coreC: degF(tempF),
      heldS: seconds(heldS),
      tookS: minutes(tookMin),
    });

  it('is to 165 °F for 15 s within 2 h, (A) and (D)', () => {
    expect(reheated(165, 15, 120).ok).toBe(true);
    expect(reheated(164, 15, 120).ok).toBe(false);
    expect(reheated(165, 14, 120).ok).toBe(false);
    expect(reheated(165, 15, 121).ok).toBe(false);
  });

  it('in a microwave ends with 2 min covered, (B)', () => {
    const microwave = { way: 'microwave', coreC: degF(165), tookS: minutes(5) } as const;
    expect(judgeReheat(foodCode, { ...microwave, heldS: seconds(120) }).ok).toBe(true);
    expect(judgeReheat(foodCode, { ...microwave, heldS: seconds(119) }).ok).toBe(false);
  });

  it('of ready food from a sealed package is to 135 °F, (C)', () => {
    const sealed = { way: 'sealed package', tookS: minutes(60) } as const;
    expect(judgeReheat(foodCode, { ...sealed, coreC: degF(135) }).ok).toBe(true);
    expect(judgeReheat(foodCode, { ...sealed, coreC: degF(134) }).ok).toBe(false);
  });

  it('of an unsliced roast may be by the roast table, (E)', () => {
    const whole = { way: 'whole roast', coreC: degF(130), tookS: hours(5) } as const;
    expect(judgeReheat(foodCode, { ...whole, heldS: minutes(112) }).ok).toBe(true);
    expect(judgeReheat(foodCode, { ...whole, heldS: minutes(111) }).ok).toBe(false);
  });
});

describe('time instead of temperature, 3-501.19', () => {
  // (B): Wis. Admin. Code ATCP 75; Georgia; Washington. (C): Minnesota; Florida. Secondary copies.
  const kept = (row: string, startF: number, warmestF: number, elapsedH: number) =>
    judgeTimeControl(foodCode, {
      row,
      startC: degF(startF),
      warmestC: degF(warmestF),
      elapsedS: hours(elapsedH),
    }).ok;

  it('is 4 h from 41 °F or below, or from 135 °F or above', () => {
    expect(kept('time-control-4h', 41, 80, 4)).toBe(true);
    expect(kept('time-control-4h', 135, 135, 4)).toBe(true);
    expect(kept('time-control-4h', 42, 80, 1)).toBe(false);
    expect(kept('time-control-4h', 134, 134, 1)).toBe(false);
    expect(kept('time-control-4h', 41, 80, 4.1)).toBe(false);
  });

  it('is 6 h from 41 °F or below if it is never above 70 °F', () => {
    expect(kept('time-control-6h', 41, 70, 6)).toBe(true);
    expect(kept('time-control-6h', 41, 71, 5)).toBe(false);
    expect(kept('time-control-6h', 135, 60, 1)).toBe(false);
    expect(kept('time-control-6h', 41, 70, 6.1)).toBe(false);
  });
});

describe('out of the cooler, 3-501.13', () => {
  // Wash. Admin. Code 246-215 (2022) and Maine; secondary copies.
  it('is 4 h above 41 °F at most, thawing and work together', () => {
    expect(judgeOutOfTemperature(foodCode, hours(4)).ok).toBe(true);
    expect(judgeOutOfTemperature(foodCode, minutes(241)).ok).toBe(false);
  });
});

describe('date marks, 3-501.17 and 3-501.18', () => {
  // Southern Nevada Health District; secondary copy. The example is theirs.
  it('of food made on 1 April is 7 April', () => {
    expect(lastDay(foodCode, '2026-04-01')).toBe('2026-04-07');
    const used = (usedOn: string) => judgeDateMark(foodCode, { madeOn: '2026-04-01', usedOn }).ok;
    expect([used('2026-04-07'), used('2026-04-08')]).toEqual([true, false]);
  });
});

describe('thermometers, 4-203.11 and 4-203.12', () => {
  // Cal. Health & Safety Code 114159; Sioux Falls city code. Secondary copies.
  it.each([
    ['food', 30, true],
    ['food', 34, true],
    ['food', 34.1, false],
    ['air', 35, true],
    ['air', 35.1, false],
  ] as const)('for %s that show %d °F in ice water: %s', (measures, shownF, isTrue) => {
    expect(judgeThermometer(foodCode, { measures, shownC: degF(shownF) }).ok).toBe(isTrue);
  });
});

describe('tables and tools in use, 4-602.11(C)', () => {
  // 2009 text as adopted in Wash. Admin. Code 246-215-04605 (2013); secondary copy.
  it('are cleaned every 4 h', () => {
    expect(judgeCleaning(foodCode, hours(4)).ok).toBe(true);
    expect(judgeCleaning(foodCode, minutes(241)).ok).toBe(false);
  });
});

describe('what needs a variance, 3-502.11', () => {
  // As adopted in Maine, Washington and Michigan; secondary copies.
  it('is curing, smoking or additives to preserve, and a vacuum bag, each by its row', () => {
    const done = ['curing', 'smoking to preserve', 'additives to preserve', 'vacuum bag'] as const;
    const rows = variancesOf(foodCode, done);
    expect(rows.map(({ process }) => process)).toEqual(done);
    expect(rows.every(({ section }) => section.startsWith('3-502.11'))).toBe(true);
    expect(variancesOf(foodCode, [])).toEqual([]);
  });
});
