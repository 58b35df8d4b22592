import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { minutes, seconds } from '../../../shared/kernel/index.ts';
import { chain } from '../../../shared/schedule/chain.ts';
import {
  check,
  construct,
  type Placement,
  type Problem,
  type Timeline,
} from '../../../shared/schedule/index.ts';
import { type Repair, repair, savedS, troubleOf } from '../../../shared/schedule/repair/index.ts';
import { liveTimeline } from '../../../shared/schedule/timeline.ts';
import { put } from './live-days.ts';
import { someNews, tell } from './news.ts';
import { activity, activityId, goal, lag, need, problem, unit, wait, work } from './problems.ts';
import { randomProblem } from './random-problem.ts';

const options = { seed: 1, nearS: minutes(10) };

const opened = (day: Problem, placements: readonly Placement[]) =>
  liveTimeline(day, { placements, links: chain(day, placements) });

const changesOf = ({ differences }: Repair) =>
  differences.map(({ activity: id, byS, isElsewhere }) => ({ id, byS, isElsewhere }));

/** Rub and slice on one hand: slicing is due soon, rubbing has all day; both can be Ben's, too. */
function oneHand(hands: readonly string[]) {
  const day = problem({
    horizonS: seconds(90_000),
    activities: [
      activity('wash', work(600), [need(['ana'])]),
      activity('rub', work(1_200), [need(hands)]),
      activity('slice', work(600), [need(hands)]),
    ],
    resources: [unit('ana'), unit('ben')],
    goals: [goal('rub', 60_000), goal('slice', 6_000)],
  });
  const placements = [
    put('wash', 3_000, 3_600, 'ana'),
    put('rub', 3_600, 4_800, 'ana'),
    put('slice', 5_000, 5_600, 'ana'),
  ];
  return opened(day, placements);
}

/** One hand has all of it to do, though another could, and is at the washing far too long. */
function heldUpByWashing(ids: readonly string[], dueS: number) {
  const day = problem({
    horizonS: seconds(90_000),
    activities: [
      activity('wash', work(600), [need(['ana'])]),
      ...ids.map((id) => activity(id, work(1_200), [need(['ana', 'ben'])])),
    ],
    resources: [unit('ana'), unit('ben')],
    goals: ids.map((id) => goal(id, dueS)),
  });
  const timeline = opened(day, [
    put('wash', 0, 600, 'ana'),
    ...ids.map((id, i) => put(id, 1_200 * (i + 1), 1_200 * (i + 2), 'ana')),
  ]);
  timeline.started(activityId('wash'), seconds(0));
  timeline.lengthIs(activityId('wash'), seconds(3_000));
  return { day, timeline };
}

describe('a day that holds', () => {
  it('asks nobody anything, also where a wait gives its margin up', () => {
    const day = problem({
      activities: [activity('smoke', work(1_000)), activity('hold', wait(100, 900, 500))],
      lags: [lag('smoke.end', 'hold.start', 0, 0)],
      goals: [goal('hold', 1_500)],
    });
    const timeline = opened(day, [put('smoke', 0, 1_000), put('hold', 1_000, 1_500)]);
    expect(repair(timeline, options)).toMatchObject({ rung: 'times', differences: [] });
    timeline.lengthIs(activityId('smoke'), seconds(1_300));
    expect(repair(timeline, options)).toMatchObject({ rung: 'margin', differences: [] });
  });
});

describe('a day that will be late', () => {
  it('is mended by what has time giving way on the hand that both need', () => {
    const timeline = oneHand(['ana']);
    timeline.lengthIs(activityId('rub'), seconds(2_400));
    const mended = repair(timeline, options);
    expect(mended).toMatchObject({ rung: 'order', before: { lateS: 600 }, after: { lateS: 0 } });
    // Slicing is back where it was shown; rubbing comes after it.
    expect(changesOf(mended)).toEqual([
      { id: 'slice', byS: 5_000 - 6_000, isElsewhere: false },
      { id: 'rub', byS: 5_600 - 3_600, isElsewhere: false },
    ]);
  });

  it('is mended by another hand where what is in the way has begun', () => {
    const timeline = oneHand(['ana', 'ben']);
    timeline.notBefore(seconds(3_600));
    timeline.finished(activityId('wash'), seconds(3_600));
    timeline.started(activityId('rub'), seconds(3_600));
    timeline.lengthIs(activityId('rub'), seconds(2_400));
    const mended = repair(timeline, options);
    expect(mended).toMatchObject({ rung: 'elsewhere', after: { lateS: 0 } });
    expect(changesOf(mended)).toEqual([{ id: 'slice', byS: -1_000, isElsewhere: true }]);
  });

  it('leaves what is shown where it is when little is gained by moving it', () => {
    const timeline = oneHand(['ana']);
    timeline.lengthIs(activityId('rub'), seconds(1_860));
    const mended = repair(timeline, options);
    expect(mended).toMatchObject({ rung: 'as-it-is', before: { lateS: 60 }, differences: [] });
  });

  it('weighs how late each goal is with its weight', () => {
    // Only one of them can be in time: slicing costs rubbing ten minutes more, rubbing it twenty.
    const of = (weight: number) => {
      const day = problem({
        horizonS: seconds(90_000),
        activities: ['wash', 'rub', 'slice'].map((id) =>
          activity(id, work(id === 'slice' ? 600 : 1_200), [need(['ana'])]),
        ),
        resources: [unit('ana')],
        goals: [{ ...goal('rub', 3_900), weight }, goal('slice', 3_900)],
      });
      const placements = [
        put('wash', 0, 1_200, 'ana'),
        put('rub', 1_200, 2_400, 'ana'),
        put('slice', 2_400, 3_000, 'ana'),
      ];
      const timeline = opened(day, placements);
      timeline.started(activityId('wash'), seconds(0));
      timeline.lengthIs(activityId('wash'), seconds(3_000));
      return repair(timeline, options);
    };
    const before = (weight: number) => ({ lateS: weight * 300 + 900 });
    expect(of(1)).toMatchObject({ rung: 'order', before: before(1), after: { lateS: 900 } });
    expect(of(10)).toMatchObject({ rung: 'as-it-is', before: before(10), after: before(10) });
  });

  it('is given no way that is refused, however much it would save', () => {
    const timeline = oneHand(['ana', 'ben']);
    timeline.lengthIs(activityId('rub'), seconds(2_400));
    expect(repair(timeline, options).rung).toBe('order');
    const rub = activityId('rub');
    const was = timeline.times(rub).endS;
    const refuses = (tried: Timeline) => tried.times(rub).endS > was;
    const mended = repair(timeline, { ...options, refuses });
    expect(mended.rung).toBe('elsewhere');
    expect(repair(timeline, { ...options, refuses: () => true })).toMatchObject({
      rung: 'as-it-is',
      differences: [],
    });
  });

  it('is worse where one waits long than where as many minutes are shared by several', () => {
    const lateBy = (...late: readonly (readonly [weight: number, byMin: number])[]) => {
      const day = problem({
        horizonS: seconds(90_000),
        activities: late.map((_, i) => activity(`a${i}`, work(600))),
        goals: late.map(([weight, byMin], i) => ({ ...goal(`a${i}`, 600 - 60 * byMin), weight })),
      });
      const timeline = opened(
        { ...day, goals: [] },
        late.map((_, i) => put(`a${i}`, 0, 600)),
      );
      return troubleOf(timeline, day.goals);
    };
    const few = lateBy([3, 30]);
    const many = lateBy([10, 3], [10, 3], [10, 3]);
    // By hand: 3 × (30 + 15) min, and 30 × 3 min.
    expect([few.lateS, many.lateS]).toEqual([8_100, 5_400]);
    expect(savedS(few, many)).toBeGreaterThan(0);
    // One batch that is cut in two is as late as it was.
    expect(lateBy([2, 30], [1, 30])).toEqual(few);
  });

  it('is mended by a few changes where one is not enough', () => {
    const { timeline } = heldUpByWashing(['a', 'b', 'c', 'd'], 6_000);
    const mended = repair(timeline, options);
    expect(mended).toMatchObject({ rung: 'elsewhere', after: { lateS: 0 } });
    expect(mended.differences.filter(({ isElsewhere }) => isElsewhere)).toHaveLength(2);
  });

  it('gives nothing to who would hold it, and takes from them what they hold', () => {
    const timeline = oneHand(['ana', 'ben']);
    const toBen = (placement: Placement) =>
      placement.uses.some(({ resource }) => resource === 'ben');
    const benIsOut = (placements: readonly Placement[]) =>
      new Map(placements.filter(toBen).map(({ activity: id }) => [id, seconds(50_000)]));
    timeline.lengthIs(activityId('rub'), seconds(2_400));
    expect(repair(timeline, { ...options, heldIf: benIsOut }).rung).toBe('order');
    const anaIsOut = (placements: readonly Placement[]) =>
      new Map(
        placements.filter((each) => !toBen(each)).map(({ activity: id }) => [id, seconds(9_000)]),
      );
    timeline.held(anaIsOut(timeline.schedule.placements));
    const mended = repair(timeline, { ...options, heldIf: anaIsOut });
    expect(mended).toMatchObject({ rung: 'elsewhere', after: { lateS: 0 } });
    expect(mended.differences.filter(({ after }) => toBen(after))).toHaveLength(1);
  });

  it('is planned anew, without what is near, where a few changes are not enough', () => {
    const { day, timeline } = heldUpByWashing([...'abcdefghijkl'], 12_000);
    const mended = repair(timeline, options);
    expect(mended).toMatchObject({ rung: 'later-anew', after: { lateS: 0 } });
    expect(check(day, { ...mended.schedule, links: [] }).map(({ kind }) => kind)).toEqual([
      'length',
    ]);
  });
});

// These days are minutes long.
const eager = { seed: 1, nearS: seconds(20), leastGainS: seconds(1) };

describe('whatever has happened', () => {
  const law = (holds: (day: Problem, before: ReturnType<typeof liveTimeline>) => void) =>
    fc.assert(
      fc.property(randomProblem({ dueS: 250 }), someNews, (day, news) => {
        const planned = construct(day, { seed: 1 });
        if (!planned.ok) return;
        const timeline = liveTimeline(day, planned.schedule);
        for (const each of news) tell(timeline, day, each);
        holds(day, timeline);
      }),
      { numRuns: 60 },
    );

  it('a proposal saves trouble, moves no fact, and changes nothing by itself', () => {
    const rungs = new Set<string>();
    law((_, timeline) => {
      const stands = timeline.schedule;
      const mended = repair(timeline, eager);
      rungs.add(mended.rung);
      expect(timeline.schedule).toEqual(stands);
      const { before, after, differences, rung } = mended;
      if (['times', 'margin', 'as-it-is'].includes(rung)) expect(differences).toEqual([]);
      else {
        const saved =
          after.doubledS - before.doubledS ||
          after.brokenS - before.brokenS ||
          after.lateS - before.lateS;
        expect(saved).toBeLessThan(0);
      }
      for (const { activity: id } of differences) {
        const { stage } = timeline.times(id);
        if (stage === 'done') throw new Error(`${id} is done`);
        if (stage === 'running') {
          const its = differences.find((each) => each.activity === id);
          expect([its?.byS, its?.isElsewhere]).toEqual([0, false]);
        }
      }
    });
    expect(rungs.size).toBeGreaterThan(2);
  });

  it('a proposal puts nothing that waits where there is no room for it', () => {
    law((day, timeline) => {
      const mended = repair(timeline, eager);
      if (mended.differences.length === 0) return;
      const shared = (schedule: typeof mended.schedule) =>
        check(day, { ...schedule, links: [] }).filter(
          (each) =>
            (each.kind === 'capacity' &&
              each.activities.some((id) => timeline.times(id).stage === 'waiting')) ||
            (each.kind === 'state' && timeline.times(each.second).stage === 'waiting'),
        ).length;
      expect(shared(mended.schedule)).toBeLessThanOrEqual(shared(timeline.schedule));
    });
  });
});
