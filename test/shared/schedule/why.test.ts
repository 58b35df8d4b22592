import { describe, expect, it } from 'vitest';
import { seconds } from '../../../shared/kernel/index.ts';
import { why } from '../../../shared/schedule/index.ts';
import { live, put } from './live-days.ts';
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

const day = problem({
  activities: [
    activity('trim', work(60), [need(['ana'])]),
    activity('rub', work(30), [need(['ana'])]),
    activity('set', wait(100, 400)),
    activity('smoke', work(200)),
  ],
  lags: [lag('rub.end', 'set.start', 0, 0), lag('set.end', 'smoke.start', 0, 0)],
  resources: [unit('ana')],
  goals: [goal('smoke', 500)],
});
const plan = [
  put('trim', 0, 60, 'ana'),
  put('rub', 60, 90, 'ana'),
  put('set', 90, 300),
  put('smoke', 300, 500),
];
const open = () => live(day, plan);

const told = (steps: ReturnType<typeof why>) =>
  steps.map(({ activity: id, end, atS, reason }) => `${id} ${end} ${atS} ${reason.kind}`);

describe('why', () => {
  it('goes back to the plan while nothing has happened', () => {
    expect(told(why(open(), { activity: activityId('rub') }))).toEqual(['rub start 60 plan']);
  });

  it('goes back over hands and lags to the fact that began it', () => {
    const timeline = open();
    timeline.started(activityId('trim'), seconds(5));
    timeline.lengthIs(activityId('trim'), seconds(250));
    expect(told(why(timeline, { activity: activityId('smoke') }))).toEqual([
      'trim start 5 fact',
      'trim end 255 length',
      'rub start 255 link',
      'rub end 285 length',
      'set start 285 lag',
      'set end 385 length',
      'smoke start 385 lag',
    ]);
  });

  it('ends at the clock where nothing but the clock holds it', () => {
    const timeline = open();
    timeline.notBefore(seconds(20));
    expect(told(why(timeline, { activity: activityId('trim') }))).toEqual(['trim start 20 now']);
  });

  it('gives the critical chain of a goal, with what each link has to spare', () => {
    const timeline = open();
    const steps = why(timeline, { goal: goalId('smoke') });
    expect(steps.map(({ activity: id, end, spareS }) => `${id} ${end} ${spareS}`)).toEqual([
      'trim start 0',
      'trim end 0',
      'rub start 0',
      'rub end 0',
      'set start 0',
      'set end 110',
      'smoke start 0',
      'smoke end 0',
    ]);
    expect(steps.at(-1)?.reason).toEqual({ kind: 'length', lengthS: 200 });
  });

  it('gives amounts that add up to where the goal is', () => {
    const timeline = open();
    timeline.started(activityId('trim'), seconds(0));
    timeline.lengthIs(activityId('trim'), seconds(300));
    const steps = timeline.criticalChain(goalId('smoke'));
    expect(steps.every(({ spareS }) => spareS === 0)).toBe(true);
    const lengths = steps.flatMap(({ reason }) =>
      reason.kind === 'length' ? [reason.lengthS] : [],
    );
    expect(lengths.reduce((sum, lengthS) => sum + lengthS, 0)).toBe(steps.at(-1)?.atS);
  });
});
