import { describe, expect, it } from 'vitest';
import { seconds } from '../../../shared/kernel/index.ts';
import {
  chain,
  createTimeline,
  type Placement,
  type Problem,
  type Timeline,
} from '../../../shared/schedule/index.ts';
import {
  activity,
  activityId,
  goal,
  goalId,
  lag,
  mode,
  need,
  problem,
  resourceId,
  unit,
  wait,
  work,
} from './problems.ts';

const put = (id: string, startS: number, endS: number, resource?: string): Placement => ({
  activity: activityId(id),
  mode: 'only',
  startS: seconds(startS),
  endS: seconds(endS),
  uses: resource === undefined ? [] : [{ need: 0, resource: resourceId(resource) }],
});

const live = (day: Problem, placements: readonly Placement[]) =>
  createTimeline(day, { placements, links: chain(day, placements) });

const spanOf = (timeline: Timeline, id: string) => {
  const { startS, endS } = timeline.times(activityId(id));
  return [startS, endS];
};

const ana = activityId('trim-a');
const ids = (names: readonly string[]) => names.map(activityId);

/** Smoke, a hold that aims at 60 of at least 20 and at most 100, and carving for the service. */
const held = problem({
  activities: [
    activity('smoke', work(400)),
    activity('hold', wait(20, 100, 60)),
    activity('carve', work(10), [need(['ana'])]),
  ],
  lags: [lag('smoke.end', 'hold.start', 0, 0), lag('hold.end', 'carve.start', 0, 0)],
  resources: [unit('ana')],
  goals: [goal('carve', 500)],
});
const heldPlan = [put('smoke', 30, 430), put('hold', 430, 490), put('carve', 490, 500, 'ana')];

describe('a wait', () => {
  it('takes up what comes late before it, down to its least', () => {
    const timeline = live(held, heldPlan);
    timeline.started(activityId('smoke'), seconds(65));
    expect(spanOf(timeline, 'smoke')).toEqual([65, 465]);
    expect(spanOf(timeline, 'hold')).toEqual([465, 490]);
    expect(spanOf(timeline, 'carve')).toEqual([490, 500]);
  });

  it('pushes on what comes after it once it is at its least', () => {
    const timeline = live(held, heldPlan);
    timeline.started(activityId('smoke'), seconds(90));
    expect(spanOf(timeline, 'hold')).toEqual([490, 510]);
    expect(spanOf(timeline, 'carve')).toEqual([510, 520]);
    expect(timeline.goal(goalId('carve'))).toMatchObject({ atS: 520, inHandS: -20 });
  });

  it('is drawn out when what is before it is early, and then lets go of the plan, not of its most', () => {
    const timeline = live(held, heldPlan);
    timeline.started(activityId('smoke'), seconds(10));
    expect(spanOf(timeline, 'hold')).toEqual([410, 490]);
    timeline.finished(activityId('smoke'), seconds(380));
    expect(spanOf(timeline, 'hold')).toEqual([380, 480]);
    expect(spanOf(timeline, 'carve')).toEqual([480, 490]);
    expect(timeline.reason(activityId('hold'), 'end')).toEqual({ kind: 'yields', lag: null });
  });

  it('that must be longer than it may is told, with the amount', () => {
    const late = problem({
      ...held,
      activities: held.activities.map((each) =>
        each.id === 'carve' ? { ...each, releaseS: seconds(490) } : each,
      ),
    });
    const timeline = live(late, heldPlan);
    timeline.started(activityId('smoke'), seconds(0));
    timeline.finished(activityId('smoke'), seconds(380));
    timeline.started(activityId('hold'), seconds(380));
    expect(spanOf(timeline, 'hold')).toEqual([380, 490]);
    expect(timeline.broken()).toEqual([
      { kind: 'wait', activity: 'hold', bound: 'most', byS: 10, settled: false },
    ]);
  });
});

describe('what is still to come', () => {
  const day = problem({
    activities: [
      activity('trim-a', work(60), [need(['ana', 'ben'])]),
      activity('trim-b', work(60), [need(['ana', 'ben'])]),
      activity('rub', work(30), [need(['ana', 'ben'])]),
    ],
    lags: [lag('trim-b.end', 'rub.start', 10)],
    resources: [
      unit('ana', [
        [0, 200],
        [230, 400],
      ]),
      unit('ben', [[0, 300]]),
    ],
    goals: [goal('rub', 180)],
  });
  const plan = [
    put('trim-a', 0, 60, 'ana'),
    put('trim-b', 60, 120, 'ana'),
    put('rub', 150, 180, 'ana'),
  ];

  it('waits for the hand that is late, and for the lag after that', () => {
    const timeline = live(day, plan);
    timeline.started(ana, seconds(0));
    timeline.lengthIs(ana, seconds(75));
    expect(spanOf(timeline, 'trim-b')).toEqual([75, 135]);
    expect(timeline.reason(activityId('trim-b'), 'start')).toMatchObject({
      kind: 'link',
      link: { from: 'trim-a', resource: 'ana' },
    });
    expect(spanOf(timeline, 'rub')).toEqual([150, 180]);
    timeline.lengthIs(ana, seconds(85));
    expect(spanOf(timeline, 'rub')).toEqual([155, 185]);
    expect(timeline.reason(activityId('rub'), 'start')).toMatchObject({
      kind: 'lag',
      bound: 'least',
    });
  });

  it('is not begun before its published time, however early all before it is done', () => {
    const timeline = live(day, plan);
    timeline.started(ana, seconds(0));
    timeline.finished(ana, seconds(20));
    expect(spanOf(timeline, 'trim-b')).toEqual([60, 120]);
    expect(timeline.reason(activityId('trim-b'), 'start')).toEqual({ kind: 'plan' });
  });

  it('is put off over a break, and says for whom', () => {
    const timeline = live(day, plan);
    timeline.started(ana, seconds(0));
    timeline.lengthIs(ana, seconds(110));
    expect(spanOf(timeline, 'trim-b')).toEqual([110, 170]);
    expect(spanOf(timeline, 'rub')).toEqual([230, 260]);
    expect(timeline.reason(activityId('rub'), 'start')).toMatchObject({
      kind: 'shift',
      resource: 'ana',
      offS: 50,
      because: { kind: 'lag' },
    });
  });

  it('goes on past the end of a shift with the same hand, and that is told', () => {
    const timeline = live(day, plan);
    timeline.started(ana, seconds(0));
    timeline.lengthIs(ana, seconds(300));
    expect(spanOf(timeline, 'trim-b')).toEqual([300, 360]);
    expect(spanOf(timeline, 'rub')).toEqual([370, 400]);
    timeline.lengthIs(ana, seconds(320));
    expect(timeline.schedule.placements.map(({ uses }) => uses[0]?.resource)).toEqual([
      'ana',
      'ana',
      'ana',
    ]);
    expect(timeline.broken()).toEqual([
      { kind: 'closed', activity: 'trim-a', resource: 'ana', byS: 120 },
      { kind: 'closed', activity: 'rub', resource: 'ana', byS: 20 },
    ]);
  });

  it('cannot start before now, and what runs cannot have ended before now', () => {
    const timeline = live(day, plan);
    expect(timeline.notBefore(seconds(0))).toEqual({ changed: [], touched: 0, moved: 0 });
    expect(timeline.notBefore(seconds(15)).changed).toEqual(ids(['trim-a', 'trim-b']));
    expect(spanOf(timeline, 'trim-a')).toEqual([15, 75]);
    expect(timeline.reason(ana, 'start')).toEqual({ kind: 'now' });
    timeline.started(ana, seconds(15));
    timeline.notBefore(seconds(90));
    expect(spanOf(timeline, 'trim-a')).toEqual([15, 90]);
    expect(spanOf(timeline, 'trim-b')).toEqual([90, 150]);
  });

  it('costs the clock nothing while nothing is due', () => {
    const timeline = live(day, plan);
    timeline.started(ana, seconds(0));
    expect(timeline.notBefore(seconds(59)).touched).toBe(0);
    expect(timeline.notBefore(seconds(60)).touched).toBe(0);
    expect(timeline.notBefore(seconds(61)).touched).toBeGreaterThan(0);
  });

  it('has as much slack as its goal, its hands and its lags leave it', () => {
    const timeline = live(day, plan);
    expect(timeline.times(activityId('trim-b'))).toMatchObject({
      stage: 'waiting',
      latestStartS: 80,
      latestEndS: 140,
      slackS: 20,
    });
    expect(timeline.times(ana)).toMatchObject({ latestStartS: 20, slackS: 20 });
    expect(timeline.goal(goalId('rub'))).toEqual({
      goal: 'rub',
      dueS: 180,
      atS: 180,
      inHandS: 20,
      hangsOn: 'trim-a',
    });
  });

  it('stays where it is when somebody else is tried on a copy', () => {
    const timeline = live(day, plan);
    timeline.started(ana, seconds(0));
    timeline.lengthIs(ana, seconds(110));
    const tried = timeline.fork();
    const rub = put('rub', 0, 0, 'ben');
    const update = tried.moved([rub]);
    expect(spanOf(tried, 'rub')).toEqual([180, 210]);
    expect(update.changed).toContain('rub');
    expect(spanOf(timeline, 'rub')).toEqual([230, 260]);
    expect(tried.goal(goalId('rub')).inHandS).toBe(-30);
    expect(timeline.goal(goalId('rub')).inHandS).toBe(-80);
  });

  it('makes room, in the order of the starts, where something is moved to a hand that is busy', () => {
    const timeline = live(day, [
      put('trim-a', 0, 60, 'ana'),
      put('trim-b', 40, 100, 'ben'),
      put('rub', 150, 180, 'ben'),
    ]);
    timeline.moved([put('trim-a', 0, 60, 'ben')]);
    expect(spanOf(timeline, 'trim-a')).toEqual([0, 60]);
    expect(spanOf(timeline, 'trim-b')).toEqual([60, 120]);
  });
});

describe('taps out of turn', () => {
  const day = problem({
    activities: ['a', 'b', 'c'].map((id) => activity(id, work(60), [need(['ana'])])),
    resources: [unit('ana')],
  });
  const plan = [put('a', 0, 60, 'ana'), put('b', 60, 120, 'ana'), put('c', 120, 180, 'ana')];

  it('let what was passed over come after what was begun', () => {
    const timeline = live(day, plan);
    timeline.started(activityId('b'), seconds(5));
    timeline.notBefore(seconds(5));
    expect(spanOf(timeline, 'a')).toEqual([65, 125]);
    expect(spanOf(timeline, 'c')).toEqual([125, 185]);
  });

  it('let what comes next wait for both, where a hand began the next thing before the last was done', () => {
    const timeline = live(day, plan);
    timeline.started(activityId('a'), seconds(0));
    timeline.started(activityId('b'), seconds(50));
    timeline.lengthIs(activityId('a'), seconds(150));
    expect(spanOf(timeline, 'c')).toEqual([150, 210]);
    expect(timeline.broken()).toEqual([
      { kind: 'link', link: expect.objectContaining({ from: 'a', to: 'b' }), byS: 100 },
    ]);
    timeline.finished(activityId('a'), seconds(70));
    expect(spanOf(timeline, 'c')).toEqual([120, 180]);
    expect(timeline.broken()).toEqual([]);
  });

  it('leave no trace when they are taken back', () => {
    const timeline = live(day, plan);
    const before = timeline.schedule;
    timeline.started(activityId('c'), seconds(0));
    expect(timeline.schedule.links).not.toEqual(before.links);
    timeline.takenBack(activityId('c'));
    expect(timeline.schedule).toEqual(before);
  });

  it('take a finish without a start as begun when it was expected', () => {
    const timeline = live(day, plan);
    timeline.finished(activityId('a'), seconds(50));
    expect(timeline.times(activityId('a'))).toMatchObject({ stage: 'done', startS: 0, endS: 50 });
    timeline.takenBack(activityId('a'));
    expect(timeline.times(activityId('a'))).toMatchObject({
      stage: 'waiting',
      startS: 0,
      endS: 60,
    });
  });
});

describe('facts that go against the plan', () => {
  it('break a maximum lag, and it is said by how much and whether it can still be mended', () => {
    const day = problem({
      activities: [
        activity('rub', work(30)),
        activity('set', work(100)),
        activity('smoke', work(60)),
      ],
      lags: [lag('rub.end', 'smoke.start', 0, 120, 'safety'), lag('set.end', 'smoke.start', 0)],
    });
    const timeline = live(day, [put('rub', 0, 30), put('set', 40, 140), put('smoke', 140, 200)]);
    timeline.finished(activityId('rub'), seconds(30));
    timeline.started(activityId('set'), seconds(70));
    const lagTooLong = { kind: 'lag', lag: day.lags[0], byS: 20 };
    expect(timeline.broken()).toEqual([{ ...lagTooLong, settled: false }]);
    timeline.started(activityId('smoke'), seconds(170));
    expect(timeline.broken()).toEqual([{ ...lagTooLong, settled: true }]);
  });

  it('move a published start forward where a maximum lag would be broken else', () => {
    const day = problem({
      activities: [activity('trim', work(60)), activity('rub', work(30))],
      lags: [lag('trim.end', 'rub.start', 0, 40)],
    });
    const timeline = live(day, [put('trim', 100, 160), put('rub', 190, 220)]);
    timeline.finished(activityId('trim'), seconds(120));
    expect(spanOf(timeline, 'rub')).toEqual([160, 190]);
    expect(timeline.reason(activityId('rub'), 'start')).toEqual({
      kind: 'yields',
      lag: day.lags[0],
    });
  });

  it('put off what has not begun, so that it does not wait too long for what is late', () => {
    const day = problem({
      activities: [
        activity('rub', work(30)),
        activity('other', work(100), [need(['rack'])]),
        activity('smoke', work(60), [need(['rack'])]),
      ],
      lags: [lag('rub.end', 'smoke.start', 0, 50)],
      resources: [unit('rack')],
    });
    const timeline = live(day, [
      put('rub', 40, 70),
      put('other', 0, 100, 'rack'),
      put('smoke', 100, 160, 'rack'),
    ]);
    timeline.started(activityId('other'), seconds(0));
    timeline.lengthIs(activityId('other'), seconds(170));
    expect(spanOf(timeline, 'smoke')).toEqual([170, 230]);
    expect(spanOf(timeline, 'rub')).toEqual([90, 120]);
    expect(timeline.reason(activityId('rub'), 'end')).toMatchObject({ kind: 'length' });
    expect(timeline.reason(activityId('rub'), 'start')).toMatchObject({
      kind: 'lag',
      bound: 'most',
    });
  });

  it('can ask for what cannot be; then the maximum is given up, and that is said', () => {
    const day = problem({
      activities: [
        activity('rub', work(30)),
        activity('set', work(50)),
        activity('smoke', work(60)),
      ],
      lags: [
        lag('rub.end', 'set.start', 0),
        lag('set.end', 'smoke.start', 0),
        lag('rub.end', 'smoke.start', 0, 60),
      ],
    });
    const timeline = live(day, [put('rub', 0, 30), put('set', 30, 80), put('smoke', 80, 140)]);
    timeline.lengthIs(activityId('set'), seconds(90));
    expect(spanOf(timeline, 'rub')).toEqual([0, 30]);
    expect(spanOf(timeline, 'smoke')).toEqual([120, 180]);
    expect(timeline.broken()).toEqual([{ kind: 'lag', lag: day.lags[2], byS: 30, settled: false }]);
    timeline.lengthIs(activityId('set'), seconds(50));
    expect(timeline.broken()).toEqual([]);
  });

  it('run past a deadline, and that is said', () => {
    const day = problem({
      activities: [activity('chill', work(60), [], { deadlineS: seconds(90) })],
    });
    const timeline = live(day, [put('chill', 10, 70)]);
    timeline.started(activityId('chill'), seconds(50));
    expect(timeline.broken()).toEqual([{ kind: 'deadline', activity: 'chill', byS: 20 }]);
    expect(timeline.times(activityId('chill')).slackS).toBe(-20);
  });
});

describe('a change of mode', () => {
  it('takes as long as the new way takes', () => {
    const day = problem({
      activities: [
        {
          id: activityId('lift'),
          modes: [mode(work(60), [need(['ana'])]), mode(work(25), [need(['ben'])], 'fast')],
        },
      ],
      resources: [unit('ana'), unit('ben')],
    });
    const timeline = live(day, [put('lift', 100, 160, 'ana')]);
    timeline.moved([
      {
        activity: activityId('lift'),
        mode: 'fast',
        uses: [{ need: 0, resource: resourceId('ben') }],
      },
    ]);
    expect(spanOf(timeline, 'lift')).toEqual([100, 125]);
  });
});
