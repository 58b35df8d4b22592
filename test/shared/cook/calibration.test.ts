import { describe, expect, it } from 'vitest';
import {
  COOKS_TO_BE_KNOWN,
  calibrated,
  isKnown,
  type Outcome,
  rawOf,
} from '../../../shared/cook/calibration.ts';
import { forecast } from '../../../shared/cook/index.ts';
import { quantilesOf } from '../../../shared/cook/quantiles.ts';
import { celsius, hours, type Seconds } from '../../../shared/kernel/index.ts';
import { at, hourly, shoulder, smoker } from './shoulder.ts';

/** Members that pass between 10 and 14 hours, the middle at 12. */
const members = Array.from({ length: 81 }, (_, i) => hours(10 + i / 20));

/** Earlier forecasts made after six hours for twelve, of cooks that then took so long. */
const cameAfter = (tookH: readonly (number | undefined)[], change: Partial<Outcome> = {}) =>
  tookH.map(
    (tookHours, index): Outcome => ({
      cookId: String(index),
      target: { tempC: celsius(96), way: 'rising' },
      wrap: 'none',
      madeAtS: hours(6),
      raw: { p50S: hours(12), never: 0 },
      passedS: tookHours === undefined ? undefined : hours(tookHours),
      ...change,
    }),
  );

const now = {
  nowS: hours(6),
  target: { tempC: celsius(96), way: 'rising' },
  wrap: 'none',
} as const;

/** Members that count all alike. */
const alike = (values: readonly number[]) => values.map((value) => ({ value, weight: 1 }));

const range = (outcomes: readonly Outcome[], passagesS: readonly number[] = members) =>
  quantilesOf(calibrated(alike(passagesS), { ...now, outcomes }), [0.1, 0.5, 0.9]);

const spread = Array.from({ length: 200 }, (_, i) => 12 + (i - 99.5) / 50);

describe('a forecast without a past', () => {
  it('keeps its middle and is wider than its members are', () => {
    const [p10 = 0, p50 = 0, p90 = 0] = range([]);
    expect(p50).toBeCloseTo(hours(12), -1);
    expect(p10).toBeLessThan(hours(10.4));
    expect(p90).toBeGreaterThan(hours(13.6));
  });
});

describe('a past', () => {
  it('in which cooks came later than foreseen makes the forecast later', () => {
    const [, p50 = 0] = range(cameAfter(spread.map((tookH) => tookH + 2)));
    expect(Math.abs(p50 - hours(14))).toBeLessThan(hours(0.25));
  });

  it('in which they came as foreseen makes it narrower', () => {
    const [p10 = 0, , p90 = 0] = range(cameAfter(spread.map((tookH) => 12 + (tookH - 12) / 10)));
    expect(p90 - p10).toBeLessThan(hours(0.8));
  });

  it('in which they came all over the place makes it wider', () => {
    const [p10 = 0, , p90 = 0] = range(cameAfter(spread.map((tookH) => 12 + (tookH - 12) * 2.5)));
    expect(p90 - p10).toBeGreaterThan(hours(7));
  });

  it('covers four of five of its like, being the spread of them', () => {
    const took = spread.map((tookH) => tookH + 0.7);
    const [p10 = 0, , p90 = 0] = range(cameAfter(took));
    const covered = took.filter((tookH) => p10 <= hours(tookH) && hours(tookH) <= p90).length;
    expect(covered / took.length).toBeCloseTo(0.8, 1);
  });

  it('of pieces wrapped otherwise, looked at much earlier or for a wrap, counts for less', () => {
    const late = spread.map((tookH) => tookH + 3);
    const few = late.slice(0, 30);
    const [, same = 0] = range(cameAfter(few));
    const [, otherWrap = 0] = range(cameAfter(few, { wrap: 'foil' }));
    const [, otherStage = 0] = range(cameAfter(few, { madeAtS: hours(0) }));
    const toWrap = { target: { tempC: celsius(70), way: 'rising' as const } };
    const [, otherTarget = 0] = range(cameAfter(few, toWrap));
    expect(otherTarget).toBeLessThan(same);
    expect(otherWrap).toBeLessThan(same);
    expect(otherStage).toBeLessThan(same);
  });

  it('counts a cook once, however often it was foreseen', () => {
    const early = cameAfter(spread.slice(0, 20).map((tookH) => tookH - 2));
    const late = cameAfter(spread.slice(0, 20).map((tookH) => tookH + 2)).map((outcome) => ({
      ...outcome,
      cookId: `late ${outcome.cookId}`,
    }));
    const often = late.flatMap((outcome) => Array.from({ length: 8 }, () => outcome));
    const [low = 0, middle = 0, high = 0] = range([...early, ...late]);
    const [lowOften = 0, middleOften = 0, highOften = 0] = range([...early, ...often]);
    expect(middleOften).toBeCloseTo(middle, -1);
    expect([lowOften, highOften]).toEqual([expect.closeTo(low, -1), expect.closeTo(high, -1)]);
  });

  it('of other wraps, however long, makes no range of its own width', () => {
    const own = cameAfter(spread.filter((_, i) => i % 8 === 0));
    const narrow = cameAfter(
      spread.map(() => 12),
      { wrap: 'foil' },
    ).map((outcome) => ({ ...outcome, cookId: `foil ${outcome.cookId}` }));
    const [p10 = 0, , p90 = 0] = range(own);
    const [lowBeside = 0, , highBeside = 0] = range([...own, ...narrow]);
    expect(highBeside - lowBeside).toBeGreaterThan(0.9 * (p90 - p10));
  });

  it('of ten cooks covers no fewer than three of four that come next', () => {
    // Each of eleven in turn is the one that comes, as exchangeable ones do (Vovk 2017).
    const took = Array.from({ length: 11 }, (_, i) => 12 + (i - 5) / 3);
    const covered = took.filter((tookH, i) => {
      const others = took.filter((_, j) => j !== i);
      const [p10 = 0, , p90 = 0] = range(cameAfter(others));
      return p10 <= hours(tookH) && hours(tookH) <= p90;
    });
    expect(covered.length / took.length).toBeGreaterThanOrEqual(0.75);
  });

  it('in which every piece came to its end does not talk down a fire that has gone out', () => {
    const lost = members.map((time, i) => (i % 10 === 0 ? time : Number.POSITIVE_INFINITY));
    const past = cameAfter(spread);
    const [, p50] = range(past, lost);
    expect(p50).toBe(Number.POSITIVE_INFINITY);
  });

  it('of pieces that never came to it makes never likely', () => {
    const outcomes = cameAfter([undefined, undefined, 12, 12]);
    const values = calibrated(alike(members), { ...now, outcomes });
    const never = values.filter(({ value }) => value === Number.POSITIVE_INFINITY);
    expect(never).toHaveLength(2);
  });
});

describe('what an ensemble says by itself', () => {
  it('is the middle of those that pass, and the share of those that never do', () => {
    const never = Number.POSITIVE_INFINITY;
    const some = alike([hours(1), hours(3), never, never]);
    expect(rawOf(some)).toEqual({ p50S: hours(2), never: 0.5 });
    expect(rawOf(alike([never]))).toBeUndefined();
  });
});

describe('a kitchen', () => {
  const cooks = (count: number, each = 5) =>
    Array.from({ length: count * each }, (_, i) => ({
      ...cameAfter([12])[0],
      cookId: String(Math.floor(i / each)),
    })) as Outcome[];

  it('is known from thirty cooks on, however often each was forecast', () => {
    expect(isKnown(cooks(COOKS_TO_BE_KNOWN - 1, 50))).toBe(false);
    expect(isKnown(cooks(COOKS_TO_BE_KNOWN, 1))).toBe(true);
  });

  it('says of a forecast whether it is its own, and gives it its own range', () => {
    const readings = hourly(27, 50, 60, 64, 66, 68);
    const before = forecast(shoulder, smoker, readings, at(6));
    const rawS = (before.ok && before.forecast.targets[1]?.raw?.p50S) || (0 as Seconds);
    const outcomes = cooks(40, 1).map((outcome) => ({
      ...outcome,
      raw: { p50S: rawS, never: 0 },
      passedS: (rawS + hours(1)) as Seconds,
    }));
    const after = forecast(shoulder, smoker, readings, { ...at(6), outcomes });
    if (!before.ok || !after.ok) throw new Error('a forecast');
    expect([before.forecast.isCalibrated, after.forecast.isCalibrated]).toEqual([false, true]);
    const p50S = after.forecast.targets[1]?.p50S ?? 0;
    expect(Math.abs(p50S - (rawS + hours(1)))).toBeLessThan(600);
  });
});
