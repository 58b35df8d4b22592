import { describe, expect, it } from 'vitest';
import { seconds } from '../../../shared/kernel/index.ts';
import { live, put, spanOf } from './live-days.ts';
import {
  activity,
  activityId,
  lag,
  mode,
  need,
  problem,
  resourceId,
  unit,
  work,
} from './problems.ts';

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

  it('let what comes next wait for both things that a hand has begun', () => {
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

  it('are none where the food below is off before the food above begins to drip', () => {
    const stacked = problem({
      activities: [
        activity('done', work(10), [need(['top', 'bottom'])]),
        activity('raw', work(100), [need(['top', 'bottom'])]),
      ],
      resources: [unit('top'), unit('bottom')],
      clashes: [
        {
          upper: { activity: activityId('raw'), part: { fromS: seconds(20) } },
          lower: { activity: activityId('done'), part: { fromS: seconds(0) } },
          places: [[resourceId('top'), resourceId('bottom')]],
          reason: 'drips',
        },
      ],
    });
    const timeline = live(stacked, [put('done', 5, 15, 'bottom'), put('raw', 0, 100, 'top')]);
    timeline.started(activityId('raw'), seconds(0));
    expect(spanOf(timeline, 'done')).toEqual([5, 15]);
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

describe('work that a break put off, with all that must come straight before it', () => {
  it('comes back to where it was once it is early enough to be done before the break', () => {
    const day = problem({
      activities: [
        activity('load', work(180)),
        activity('smoke', work(7_200)),
        activity('probe', work(540), [need(['ana'])]),
      ],
      lags: [lag('load.end', 'smoke.start', 0, 0), lag('smoke.end', 'probe.start', 0, 600)],
      resources: [
        unit('ana', [
          [0, 12_000],
          [12_900, 40_000],
        ]),
      ],
    });
    const timeline = live(day, [
      put('load', 2_000, 2_180),
      put('smoke', 2_180, 9_380),
      put('probe', 9_380, 9_920, 'ana'),
    ]);
    timeline.lengthIs(activityId('load'), seconds(2_580));
    expect(spanOf(timeline, 'probe')).toEqual([12_900, 13_440]);
    expect(spanOf(timeline, 'smoke')).toEqual([5_100, 12_300]);
    timeline.lengthIs(activityId('load'), seconds(180));
    expect(spanOf(timeline, 'load')).toEqual([2_000, 2_180]);
    expect(spanOf(timeline, 'smoke')).toEqual([2_180, 9_380]);
    expect(spanOf(timeline, 'probe')).toEqual([9_380, 9_920]);
  });
});
