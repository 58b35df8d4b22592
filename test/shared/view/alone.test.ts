import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { StationView, TaskView } from '../../../shared/view/index.ts';
import { drawnView, moveTimes } from '../../../shared/view/index.ts';
import {
  at,
  loadRibs,
  NOW,
  rubRibs,
  silverskin,
  squareRibs,
  stationView,
  task,
} from '../../client/fixtures.ts';

const startsOf = ({ tasks }: StationView, ids: readonly string[]) =>
  ids.map((id) => ((tasks.find((each) => each.id === id)?.startAt ?? 0) - NOW) / 60_000);

const withTask = (changed: TaskView): StationView => ({
  ...stationView,
  tasks: stationView.tasks.map((each) => (each.id === changed.id ? changed : each)),
});

describe('a screen that goes on alone', () => {
  it('leaves the times as the hub moved them, while nothing is overdue', () => {
    expect(moveTimes(stationView, NOW)).toEqual(stationView);
  });

  it('lets what runs end no sooner than now, and moves what follows by the lags', () => {
    const moved = moveTimes(stationView, at(30));
    expect(moved.tasks[0]?.endAt).toBe(at(30));
    expect(startsOf(moved, [rubRibs.id, loadRibs.id])).toEqual([30, 30 + 26 + 12]);
  });

  it('moves a task that waits for a hand with the work the hand is at', () => {
    const moved = moveTimes(stationView, at(30));
    expect(startsOf(moved, [silverskin.id])).toEqual([30 + 26 + 12 + 6]);
  });

  it('draws a start forward when all that it waited for is done sooner', () => {
    const early = withTask({ ...squareRibs, state: 'done', endAt: at(5) });
    expect(startsOf(moveTimes(early, at(6)), [rubRibs.id])).toEqual([6]);
  });

  it('never draws a start forward past what it does not know of', () => {
    const planned = withTask({ ...rubRibs, because: { kind: 'plan', at: rubRibs.startAt } });
    const early = { ...planned, tasks: planned.tasks.filter(({ id }) => id !== squareRibs.id) };
    expect(startsOf(moveTimes(early, at(0)), [rubRibs.id])).toEqual([15]);
  });

  it('keeps what is done', () => {
    const past = task('ribs-0/square', 'Square spare ribs', [-60, 30], { state: 'done' });
    const view = { ...stationView, tasks: [past] };
    expect(moveTimes(view, at(90)).tasks[0]).toBe(past);
  });

  it('keeps every lag and every length, whenever it is asked', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 600 }), (minutesAlone) => {
        const moved = moveTimes(stationView, at(minutesAlone));
        for (const each of moved.tasks) {
          const before = stationView.tasks.find(({ id }) => id === each.id);
          if (each.state !== 'running') {
            expect(each.endAt - each.startAt).toBe((before?.endAt ?? 0) - (before?.startAt ?? 0));
            expect(each.startAt).toBeGreaterThanOrEqual(at(minutesAlone));
          }
          for (const { task: id, lagS } of each.after) {
            const from = moved.tasks.find((other) => other.id === id);
            expect(each.startAt).toBeGreaterThanOrEqual((from?.endAt ?? 0) + lagS * 1000);
          }
        }
      }),
    );
  });
});

describe('what a screen draws', () => {
  it('is the view of the hub itself while it hears the hub and owes it nothing', () => {
    const drawn = drawnView(stationView, [], { now: at(30), isAlone: false });
    expect(drawn.view).toBe(stationView);
  });

  it('moves on when the hub is away', () => {
    const drawn = drawnView(stationView, [], { now: at(30), isAlone: true });
    expect(startsOf(drawn.view, [rubRibs.id])).toEqual([30]);
  });
});
