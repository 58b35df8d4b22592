import { describe, expect, it } from 'vitest';
import { seconds } from '../../../shared/kernel/index.ts';
import { inHandIf as askIf } from '../../../shared/schedule/index.ts';
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

// Two cooks that one hand carves one after the other, each with a hold before that may be short,
// for two services. All of it is worked out by hand in the titles below.
const pit = problem({
  activities: [
    activity('smoke-a', work(300)),
    activity('hold-a', wait(20, 100)),
    activity('carve-a', work(10), [need(['ana'])]),
    activity('smoke-b', work(360)),
    activity('hold-b', wait(20, 100)),
    activity('carve-b', work(10), [need(['ana'])]),
  ],
  lags: ['a', 'b'].flatMap((of) => [
    lag(`smoke-${of}.end`, `hold-${of}.start`, 0, 0),
    lag(`hold-${of}.end`, `carve-${of}.start`, 0, 0),
  ]),
  resources: [unit('ana')],
  goals: [goal('carve-a', 420), goal('carve-b', 480)],
});
const planned = [
  ...[put('smoke-a', 0, 300), put('hold-a', 300, 340), put('carve-a', 340, 350, 'ana')],
  ...[put('smoke-b', 0, 360), put('hold-b', 360, 400), put('carve-b', 400, 410, 'ana')],
];

const [early, later] = [[goalId('carve-a')], [goalId('carve-b')]];

function inHandIf(lengths: Readonly<Record<string, number>>) {
  const timeline = live(pit, planned);
  timeline.started(activityId('smoke-a'), seconds(0));
  timeline.started(activityId('smoke-b'), seconds(0));
  const asked = Object.entries(lengths).map(([id, s]) => [activityId(id), seconds(s)] as const);
  const found = askIf(timeline, asked, [early, later]);
  // Nothing of it has happened.
  expect(timeline.goal(goalId('carve-a')).atS).toBe(350);
  expect(timeline.goal(goalId('carve-b')).atS).toBe(410);
  return found.map(({ inHandS }) => inHandS);
}

describe('what services would have in hand if cooks took another time', () => {
  it('is the due time less the carving, the least hold and the longer of the ways there', () => {
    // 420 - 10 - 20 - 300 for the first; of the second the first cook has 480 - 10 - 10 - 20 - 300,
    // and its own 480 - 10 - 20 - 360.
    expect(inHandIf({})).toEqual([90, 90]);
  });

  it('falls by what one takes longer, for both where one hand does the other after it', () => {
    // 420 - 10 - 20 - 380, and 480 - 10 - 10 - 20 - 380.
    expect(inHandIf({ 'smoke-a': 380 })).toEqual([10, 60]);
  });

  it('is not lessened where only the later is longer, for the one before it', () => {
    expect(inHandIf({ 'smoke-b': 430 })).toEqual([90, 20]);
  });

  it('is short by how late the latest carving ends', () => {
    // 400 + 20 + 10 is 10 over 420; the second then waits for nothing but its own 460 + 20 + 10.
    expect(inHandIf({ 'smoke-a': 400, 'smoke-b': 460 })).toEqual([-10, -10]);
  });

  it('has room where they are shorter, and the plan’s own time is no floor for it', () => {
    expect(inHandIf({ 'smoke-a': 250, 'smoke-b': 300 })).toEqual([140, 150]);
  });
});
