import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { must } from '../../../shared/kernel/index.ts';
import { boundOf } from '../../../shared/schedule/bound/index.ts';
import { solveExactly } from '../../../shared/schedule/exact/index.ts';
import { improve } from '../../../shared/schedule/improve.ts';
import { check, construct, type Problem } from '../../../shared/schedule/index.ts';
import { scheduleOf } from '../../../shared/schedule/schedule-of.ts';
import { netAiming } from '../../../shared/schedule/search.ts';
import { validate } from '../../../shared/schedule/validate.ts';
import { compareWorth, measureOf, worthOf } from '../../../shared/schedule/worth.ts';
import { leastByTryingAll } from './by-trying-all.ts';
import { generatedDay } from './generated-day.ts';
import { activity, goal, need, problem, unit, work } from './problems.ts';
import { randomProblem } from './random-problem.ts';
import { tinyProblem } from './tiny-problem.ts';

const NODES_MOST = 1_500;

const netOf = (day: Problem) => netAiming(day, { aim: 0, lateS: day.goals.map(() => 0) }).net;

/** The proven best, or that there is none, or nothing where that was not found out. */
function exactly(day: Problem) {
  const net = validate(day).length > 0 ? undefined : netOf(day);
  if (!net) return undefined;
  const solved = solveExactly(net, measureOf(day), { nodesMost: NODES_MOST });
  if (solved.status !== 'proven') return undefined;
  const schedule = solved.slots && scheduleOf(day, solved.slots);
  return { net, schedule, aheadS: schedule && worthOf(day, schedule).aheadS };
}

describe('a small day that is solved exactly', () => {
  it('is as good as anything that is found by trying all there is', () => {
    let feasible = 0;
    fc.assert(
      fc.property(tinyProblem, (day) => {
        const solved = exactly(day);
        if (!solved) return;
        const least = leastByTryingAll(day, (schedule) => worthOf(day, schedule).aheadS);
        expect(solved.aheadS).toBe(least);
        if (least !== undefined) feasible++;
      }),
      { numRuns: 20, seed: 4 },
    );
    expect(feasible).toBeGreaterThan(5);
  });

  it('keeps everything, is never beaten by a plan, and has a plan wherever one was found', () => {
    fc.assert(
      fc.property(randomProblem({ dueS: 150 }), (day) => {
        const solved = exactly(day);
        if (!solved) return;
        const { schedule, aheadS = 0 } = solved;
        if (schedule) expect(check(day, schedule)).toEqual([]);
        const planned = construct(day, { seed: 1 });
        if (!planned.ok) return;
        expect(schedule).toBeDefined();
        expect(worthOf(day, planned.schedule).aheadS).toBeGreaterThanOrEqual(aheadS);
      }),
      { numRuns: 50 },
    );
  });
});

describe('the bound of a day', () => {
  it('is never above the best there is', () => {
    let tight = 0;
    fc.assert(
      fc.property(randomProblem({ dueS: 150 }), (day) => {
        const solved = exactly(day);
        if (!solved?.schedule) return;
        const bound = boundOf(solved.net, measureOf(day)) ?? Number.POSITIVE_INFINITY;
        expect(bound).toBeLessThanOrEqual(solved.aheadS ?? 0);
        if (bound === solved.aheadS) tight++;
      }),
      { numRuns: 60, seed: 3 },
    );
    expect(tight).toBeGreaterThan(15);
  });

  it('counts that of three cooks on one rack two cannot be ready at the last minute', () => {
    // Own example: one rack, three cooks of 100 s, all due at 400: ends at 400, 300 and 200.
    const cooks = ['a', 'b', 'c'];
    const day = problem({
      activities: cooks.map((id) => activity(id, work(100), [need(['rack'])])),
      resources: [unit('rack')],
      goals: cooks.map((id) => goal(id, 400)),
    });
    const net = must(netOf(day), 'lags that can hold');
    expect(boundOf(net, measureOf(day))).toBe(0 + 100 + 200);
    expect(exactly(day)?.aheadS).toBe(300);
  });

  it('counts the hours of the hands', () => {
    const day = problem({
      activities: [activity('carve', work(100), [need(['ana'])])],
      resources: [
        unit('ana', [
          [0, 250],
          [350, 900],
        ]),
      ],
      goals: [goal('carve', 400)],
    });
    const net = must(netOf(day), 'lags that can hold');
    expect(boundOf(net, measureOf(day))).toBe(150);
  });
});

describe('an improved schedule', () => {
  it('keeps everything and is no worse, on days with every feature', () => {
    fc.assert(
      fc.property(randomProblem({ dueS: 150 }), fc.nat(9), (day, seed) => {
        const planned = construct(day, { seed: 1 });
        if (!planned.ok) return;
        const { schedule, worth } = improve(day, planned.schedule, { seed, steps: 40 });
        expect(check(day, schedule)).toEqual([]);
        expect(worth).toEqual(worthOf(day, schedule));
        expect(compareWorth(worth, worthOf(day, planned.schedule))).toBeLessThanOrEqual(0);
      }),
      { numRuns: 60 },
    );
  });

  it('is the same for the same seed and steps, and no worse for more steps', () => {
    const day = generatedDay(120, 2);
    const planned = construct(day, { seed: 1 });
    if (!planned.ok) throw new Error('the day can be planned');
    const after = (steps: number) => improve(day, planned.schedule, { seed: 7, steps });
    expect(after(60)).toEqual(after(60));
    expect(compareWorth(after(60).worth, after(20).worth)).toBeLessThanOrEqual(0);
  });

  it('stands nearer to its bound on a busy day, and the checker passes it', () => {
    const day = generatedDay(204, 1);
    const planned = construct(day, { seed: 1 });
    if (!planned.ok) throw new Error('the day can be planned');
    const gap = (steps: number) => {
      const { schedule, worth, aheadLeastS } = improve(day, planned.schedule, { seed: 1, steps });
      expect(check(day, schedule)).toEqual([]);
      expect(worth.aheadS).toBeGreaterThanOrEqual(aheadLeastS);
      return (worth.aheadS - aheadLeastS) / aheadLeastS;
    };
    expect(gap(0)).toBeGreaterThan(0.05);
    expect(gap(300)).toBeLessThan(0.02);
  });

  it('is what it was when told to stop at once', () => {
    const day = generatedDay(60, 1);
    const planned = construct(day, { seed: 1 });
    if (!planned.ok) throw new Error('the day can be planned');
    const stopped = improve(day, planned.schedule, {
      seed: 1,
      steps: 1_000,
      shouldStop: () => true,
    });
    expect(stopped.schedule).toEqual(planned.schedule);
    expect(stopped.steps).toBe(0);
  });
});
