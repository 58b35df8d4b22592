import { describe, expect, it } from 'vitest';
import { seconds } from '../../../shared/kernel/index.ts';
import { type Problem, validate } from '../../../shared/schedule/index.ts';
import {
  activity,
  activityId,
  goal,
  lag,
  mode,
  need,
  pool,
  problem,
  resourceId,
  unit,
  wait,
  work,
} from './problems.ts';

const faultsOf = (day: Problem) =>
  validate(day).map((each) =>
    each.kind === 'malformed' ? `${each.where} ${each.what}` : each.kind,
  );

describe('validate', () => {
  it('finds nothing wrong with a day that can be', () => {
    const day = problem({
      activities: [activity('rub', work(60), [need(['ana'])]), activity('set', wait(60, 600))],
      lags: [lag('rub.end', 'set.start', 0, 0)],
      resources: [unit('ana', [[0, 300]])],
      goals: [goal('set', 900)],
    });
    expect(validate(day)).toEqual([]);
  });

  it('tells all that is not well formed at once, each with where and what', () => {
    const day = problem({
      horizonS: seconds(-1),
      activities: [
        activity('rub', work(-60), [need(['nobody'])]),
        activity('rub', wait(60, 30)),
        { id: activityId('set'), modes: [] },
      ],
      lags: [lag('rub.end', 'smoke.start', 10, 5)],
      resources: [
        pool('rack', -1, [
          [50, 20],
          [10, 30],
        ]),
      ],
      goals: [goal('carve', 0.5)],
    });
    expect(faultsOf(day)).toEqual([
      'horizonS is -1, not a whole number from 0',
      'activities name rub more than once',
      'resources.rack.capacity is -1, not a whole number from 0',
      'resources.rack.open[0] goes from 50 to 20',
      'resources.rack.open[1] goes from 20 to 10',
      'activities.rub.only.length.lowS is -60, not a whole number from 0',
      'activities.rub.only.length.typicalS is -60, not a whole number from 0',
      'activities.rub.only.length.highS is -60, not a whole number from 0',
      'activities.rub.only.nobody names nobody, which is not there',
      'activities.rub.only.length goes from 60 to 30',
      'activities.set has no mode',
      'lags[0].to names smoke, which is not there',
      'lags[0] goes from 10 to 5',
      'goals.carve names carve, which is not there',
      'goals.carve.dueS is 0.5, not a whole number',
    ]);
  });

  it('finds pins and clashes that name what is not there', () => {
    const day = problem({
      activities: [
        activity('smoke', work(60), [need(['rack'])], {
          pin: { mode: 'hot', startS: seconds(5) },
        }),
        activity('rest', work(60), [need(['rack'])], {
          pin: {
            mode: 'only',
            startS: seconds(9),
            endS: seconds(5),
            uses: [{ need: 1, resource: resourceId('shelf') }],
          },
        }),
      ],
      resources: [unit('rack')],
      clashes: [
        {
          upper: { activity: activityId('smoke'), part: { fromS: seconds(9), toS: seconds(4) } },
          lower: { activity: activityId('beans'), part: { fromS: seconds(0) } },
          places: [[resourceId('rack'), resourceId('oven')]],
          reason: 'drips',
        },
      ],
    });
    expect(faultsOf(day)).toEqual([
      'activities.smoke.pin names mode hot, which is not there',
      'activities.rest.pin goes from 9 to 5',
      'activities.rest.pin names need 1, which is not there',
      'activities.rest.pin names shelf, which is not there',
      'clashes[0].lower names beans, which is not there',
      'clashes[0].upper goes from 9 to 4',
      'clashes[0].places names oven, which is not there',
    ]);
  });

  it('finds a resource that is never open for so long', () => {
    const day = problem({
      activities: [activity('trim', work(100), [need(['ana'])])],
      resources: [
        unit('ana', [
          [0, 60],
          [70, 160],
        ]),
      ],
    });
    expect(validate(day)).toEqual([
      { kind: 'no-resource', activity: 'trim', role: 'ana', amount: 1, most: 0 },
    ]);
  });

  it('finds two needs that could be filled one by one, but not together', () => {
    const both = [need(['ana'], 1, 'lifts'), need(['ana'], 1, 'holds')];
    const day = problem({
      activities: [activity('load', work(60), both)],
      resources: [unit('ana')],
    });
    expect(validate(day)).toEqual([
      { kind: 'no-resource', activity: 'load', role: 'holds', amount: 1, most: 0 },
    ]);
  });

  it('is content if one way of several can be done', () => {
    const ways = [mode(work(60), [need(['rack'], 5)], 'whole'), mode(work(60), [], 'in parts')];
    const day = problem({
      activities: [{ id: activityId('load'), modes: ways }],
      resources: [pool('rack', 2)],
    });
    expect(validate(day)).toEqual([]);
  });

  it('goes round a circle of lags only as far as the circle goes', () => {
    const day = problem({
      activities: ['pull', 'trim', 'rub', 'carve'].map((id) => activity(id, work(60))),
      lags: [
        lag('pull.end', 'trim.start', 0),
        lag('trim.end', 'rub.start', 300),
        lag('trim.start', 'rub.start', 0, 200),
        lag('rub.end', 'carve.start', 0),
      ],
    });
    expect(validate(day)).toEqual([
      { kind: 'lags-contradict', activities: ['trim', 'rub'], excessS: 160 },
    ]);
  });

  it('says which chain runs past a deadline', () => {
    const day = problem({
      activities: [
        activity('thaw', work(500), [], { releaseS: seconds(100) }),
        activity('trim', work(60), [], { deadlineS: seconds(600) }),
      ],
      lags: [lag('thaw.end', 'trim.start', 0)],
    });
    expect(validate(day)).toEqual([
      { kind: 'lags-contradict', activities: ['thaw', 'trim'], excessS: 60 },
    ]);
  });
});
