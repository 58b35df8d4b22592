import { describe, expect, it } from 'vitest';
import { seconds } from '../../../shared/kernel/index.ts';
import { live, put, spanOf } from './live-days.ts';
import {
  activity,
  activityId,
  goal,
  goalId,
  lag,
  need,
  problem,
  unit,
  wait,
  work,
} from './problems.ts';

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

  it('is drawn out when what is before it is early, but to its most alone', () => {
    const timeline = live(held, heldPlan);
    timeline.started(activityId('smoke'), seconds(10));
    expect(spanOf(timeline, 'hold')).toEqual([410, 490]);
    timeline.finished(activityId('smoke'), seconds(380));
    expect(spanOf(timeline, 'hold')).toEqual([380, 480]);
    expect(spanOf(timeline, 'carve')).toEqual([480, 490]);
    expect(timeline.reason(activityId('hold'), 'end')).toEqual({ kind: 'yields', lag: null });
  });

  it('takes nothing from the minutes in hand by how long it may be at most', () => {
    const timeline = live(held, heldPlan);
    timeline.started(activityId('smoke'), seconds(0));
    timeline.finished(activityId('smoke'), seconds(380));
    timeline.started(activityId('hold'), seconds(380));
    timeline.notBefore(seconds(400));
    expect(timeline.goal(goalId('carve'))).toMatchObject({ inHandS: 90, hangsOn: 'hold' });
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

  it('makes room, in the order of the starts, where work is moved to a busy hand', () => {
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

describe('work that a most-lag puts past the end of its hours', () => {
  // Ana wraps right before loading, and is away from 100 to 110; what is fetched comes late.
  const late = () => {
    const timeline = live(
      problem({
        activities: [
          activity('fetch', work(60)),
          activity('wrap', work(10), [need(['ana'])]),
          activity('load', work(5)),
        ],
        lags: [lag('fetch.end', 'load.start', 0), lag('wrap.end', 'load.start', 0, 0)],
        resources: [
          unit('ana', [
            [0, 100],
            [110, 300],
          ]),
        ],
        goals: [goal('load', 200)],
      }),
      [put('fetch', 0, 60), put('wrap', 60, 70, 'ana'), put('load', 70, 75)],
    );
    timeline.started(activityId('fetch'), seconds(0));
    timeline.lengthIs(activityId('fetch'), seconds(105));
    return timeline;
  };

  it('is put to the minute that it asks, and on to the next hours once it does not fit', () => {
    const timeline = late();
    expect(spanOf(timeline, 'wrap')).toEqual([95, 105]);
    expect(timeline.notBefore(seconds(90)).changed).toEqual([]);
    timeline.notBefore(seconds(92));
    expect(spanOf(timeline, 'wrap')).toEqual([110, 120]);
    expect(spanOf(timeline, 'load')).toEqual([120, 125]);
    expect(timeline.fork().moved([]).changed).toEqual([]);
  });
});
