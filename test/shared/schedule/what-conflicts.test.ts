import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hours, minutes, seconds } from '../../../shared/kernel/index.ts';
import { smallest } from '../../../shared/schedule/conflicting/smallest.ts';
import { construct } from '../../../shared/schedule/index.ts';
import { validate } from '../../../shared/schedule/validate.ts';
import { whatConflicts } from '../../../shared/schedule/what-conflicts.ts';
import {
  activity,
  activityId,
  goal,
  lag,
  need,
  problem,
  resourceId,
  unit,
  wait,
  work,
} from './problems.ts';
import { randomProblem } from './random-problem.ts';

const options = { checksMost: 200 };

// Own example: two cooks of three hours may each wait at most an hour for the one service. On one
// rack the first ends three hours before the second does.
const twoCooks = problem({
  horizonS: hours(24),
  activities: [
    activity('ribs', work(hours(3)), [need(['rack'])]),
    activity('chicken', work(hours(3)), [need(['rack'])]),
    activity('serve', work(minutes(30))),
    activity('beans', work(hours(2)), [need(['ana'])]),
    activity('plate', work(minutes(10)), [need(['ana'])]),
  ],
  lags: [
    lag('ribs.end', 'serve.start', 0, hours(1), 'quality'),
    lag('chicken.end', 'serve.start', 0, hours(1), 'quality'),
    lag('beans.end', 'plate.start', 0, hours(1), 'quality'),
  ],
  resources: [unit('rack'), unit('ana', [[0, hours(20)]])],
  goals: [goal('serve', hours(20)), goal('plate', hours(20))],
});

describe('what conflicts', () => {
  it('is the rack and the two waits, and nothing that has no part in it, proven', () => {
    const found = whatConflicts(twoCooks, options);
    expect(found).toMatchObject({ isSmallest: true, isProven: true });
    expect(new Set(found?.demands)).toEqual(
      new Set([
        { kind: 'need', activity: 'ribs', role: 'rack' },
        { kind: 'need', activity: 'chicken', role: 'rack' },
        { kind: 'most', lag: twoCooks.lags[0] },
        { kind: 'most', lag: twoCooks.lags[1] },
      ]),
    );
  });

  it('is the hours, the goal and the hand where a hand comes too late', () => {
    const day = problem({
      activities: [activity('trim', work(100), [need(['ana'])]), activity('hold', wait(50, 90))],
      lags: [lag('trim.end', 'hold.start', 0, 200)],
      resources: [unit('ana', [[300, 900]])],
      goals: [goal('hold', 440)],
    });
    expect(
      whatConflicts(day, options)
        ?.demands.map(({ kind }) => kind)
        .sort(),
    ).toEqual(['goal', 'hours', 'need']);
  });

  it('is what drips, with the places that it drips in', () => {
    const day = problem({
      activities: [
        activity('chicken', work(100), [need(['top'])]),
        activity('ribs', work(100), [need(['bottom'])]),
      ],
      resources: [unit('top'), unit('bottom')],
      clashes: [
        {
          upper: { activity: activityId('chicken'), part: { fromS: seconds(0) } },
          lower: { activity: activityId('ribs'), part: { fromS: seconds(0) } },
          places: [[resourceId('top'), resourceId('bottom')]],
          reason: 'drips',
        },
      ],
      goals: [goal('chicken', 150), goal('ribs', 150)],
    });
    const found = whatConflicts(day, options);
    expect(found).toMatchObject({ isSmallest: true, isProven: true });
    expect(found?.demands.map(({ kind }) => kind).sort()).toEqual([
      ...['clash', 'goal', 'goal'],
      ...['need', 'need'],
    ]);
  });

  it('is nothing on a day that can be planned', () => {
    const day = { ...twoCooks, lags: twoCooks.lags.slice(0, 1) };
    expect(whatConflicts(day, options)).toBeUndefined();
  });

  it('is left as large as it was where nothing may be asked any more', () => {
    const found = whatConflicts(twoCooks, { checksMost: 1 });
    expect(found?.isSmallest).toBe(false);
    expect(found?.demands.length).toBeGreaterThan(4);
  });

  it('is found on random days that cannot be, and is told as proven only where it is', () => {
    let found = 0;
    fc.assert(
      fc.property(randomProblem({ dueS: 60 }), (day) => {
        if (construct(day, { seed: 1 }).ok) return;
        const conflict = whatConflicts(day, { checksMost: 60 });
        // Another search may find what the planner did not.
        if (!conflict) return;
        found++;
        expect(conflict.demands.length).toBeGreaterThan(0);
        if (conflict.isProven) expect(construct(day, { seed: 2 }).ok).toBe(false);
        else expect(validate(day)).toEqual([]);
      }),
      { numRuns: 40, seed: 11 },
    );
    expect(found).toBeGreaterThan(5);
  });
});

describe('the smallest of a set', () => {
  it('is the one that was hidden in it, wherever it lies', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.nat(60), { minLength: 1, maxLength: 5 }), (hidden) => {
        const all = Array.from({ length: 61 }, (_, i) => i);
        let asked = 0;
        const cannot = (some: readonly number[]) => {
          asked++;
          return hidden.every((each) => some.includes(each));
        };
        const { left, isSmallest } = smallest(all, cannot);
        expect([...left].sort((a, b) => a - b)).toEqual([...hidden].sort((a, b) => a - b));
        expect(isSmallest).toBe(true);
        // Junker's bound: 2 k log(n / k) + 2 k questions for k of n.
        const k = hidden.length;
        expect(asked).toBeLessThanOrEqual(2 * k * Math.log2(all.length / k) + 2 * k + 2);
      }),
    );
  });
});
