import { describe, expect, it } from 'vitest';
import { minutes, seconds } from '../../../shared/kernel/index.ts';
import { check, construct, type Problem } from '../../../shared/schedule/index.ts';
import { plannerContract } from '../../contracts/planner.ts';
import { barbecueDay } from './barbecue-day.ts';
import { activity, goal, lag, need, problem, unit, wait, work } from './problems.ts';

plannerContract('construct', construct);

function placementsOf(day: Problem) {
  const planned = construct(day, { seed: 1 });
  if (!planned.ok) throw new Error(JSON.stringify(planned.conflicts));
  return new Map(planned.schedule.placements.map((each) => [String(each.activity), each]));
}

describe('construct', () => {
  it('does everything as late as its service allows, so that food is fresh', () => {
    const day = problem({
      activities: [activity('smoke', work(3600)), activity('carve', work(600))],
      lags: [lag('smoke.end', 'carve.start', 0)],
      goals: [goal('carve', 10_000)],
    });
    const placed = placementsOf(day);
    expect(placed.get('carve')).toMatchObject({ startS: 9_400, endS: 10_000 });
    expect(placed.get('smoke')).toMatchObject({ startS: 5_800, endS: 9_400 });
  });

  it('does so for a service at the very end of the day, too', () => {
    const day = problem({
      horizonS: seconds(900),
      activities: [activity('smoke', work(300)), activity('carve', work(100))],
      lags: [lag('smoke.end', 'carve.start', 0)],
      goals: [goal('carve', 900)],
    });
    expect(placementsOf(day).get('smoke')).toMatchObject({ startS: 500 });
  });

  it('does what no service waits for as early as it can', () => {
    const day = problem({
      activities: [activity('trim', work(600)), activity('sort', work(300))],
      lags: [lag('trim.end', 'sort.start', 0)],
      goals: [goal('trim', 5_000)],
    });
    expect(placementsOf(day).get('sort')).toMatchObject({ startS: 5_000, endS: 5_300 });
  });

  it('gives a wait the length it aims at where there is room, and less where there is not', () => {
    const held = (releaseS: number) =>
      problem({
        activities: [
          activity('smoke', work(1_000), [], { releaseS: seconds(releaseS) }),
          activity('hold', wait(100, 5_000, 900)),
        ],
        lags: [lag('smoke.end', 'hold.start', 0, 0)],
        goals: [goal('hold', 3_000)],
      });
    expect(placementsOf(held(0)).get('hold')).toMatchObject({ startS: 2_100, endS: 3_000 });
    expect(placementsOf(held(1_700)).get('hold')).toMatchObject({ startS: 2_700, endS: 3_000 });
  });

  it('draws a wait out when the hand before it is busy', () => {
    const chain = (id: string) => [
      activity(`rub-${id}`, work(minutes(20)), [need(['ana'])]),
      activity(`set-${id}`, wait(minutes(10), minutes(60))),
      activity(`smoke-${id}`, work(minutes(90))),
    ];
    const day = problem({
      activities: ['a', 'b'].flatMap(chain),
      lags: ['a', 'b'].flatMap((id) => [
        lag(`rub-${id}.end`, `set-${id}.start`, 0, 0),
        lag(`set-${id}.end`, `smoke-${id}.start`, 0, 0),
      ]),
      resources: [unit('ana')],
      goals: ['a', 'b'].map((id) => goal(`smoke-${id}`, 20_000)),
    });
    const placed = placementsOf(day);
    const lengths = ['set-a', 'set-b'].map((id) => {
      const wait_ = placed.get(id);
      return (wait_?.endS ?? 0) - (wait_?.startS ?? 0);
    });
    expect(lengths.sort((a, b) => a - b)).toEqual([minutes(10), minutes(30)]);
  });

  it('plans a barbecue day of three hundred tasks that the checker passes', () => {
    const day = barbecueDay(300, 7);
    const planned = construct(day, { seed: 1 });
    expect(planned.ok && check(day, planned.schedule)).toEqual([]);
  });
});
