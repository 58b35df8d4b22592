import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openLive } from '../../../shared/day/index.ts';
import type { CommandId } from '../../../shared/kernel/index.ts';
import { after, minutes, must } from '../../../shared/kernel/index.ts';
import { overlay, type StationView, tallyOf, viewOf } from '../../../shared/view/index.ts';
import { plan, Telling } from '../day/demo.ts';

/** What a tally shows after each tap from a count on, until nothing is left to be counted. */
function tapped(task: { pieces: number; trayHolds?: number }, from = 0): number[] {
  const counts = [from];
  for (let counted = from; counted < task.pieces; ) {
    counted = tallyOf({ ...task, counted }, 0).next;
    counts.push(counted);
  }
  return counts;
}

describe('a tally by the tray', () => {
  it('counts all of a tray at a tap, and of the last what lies on it', () => {
    expect(tapped({ pieces: 10, trayHolds: 4 })).toEqual([0, 4, 8, 10]);
  });

  it('has a stroke for each tray, the last among them', () => {
    expect(tallyOf({ pieces: 10, trayHolds: 4, counted: 10 }, 10).strokes).toBe(3);
  });

  it('counts a batch that fits one tray at one tap', () => {
    expect(tapped({ pieces: 3, trayHolds: 8 })).toEqual([0, 3]);
  });

  it('goes on to full trays from what was counted piece by piece', () => {
    expect(tapped({ pieces: 20, trayHolds: 8 }, 5)).toEqual([5, 8, 16, 20]);
    expect(tallyOf({ pieces: 20, trayHolds: 8, counted: 5 }, 5)).toMatchObject({
      ...{ strokes: 1, keptStrokes: 1, before: 0 },
    });
  });

  it('draws as kept what the hub has', () => {
    expect(tallyOf({ pieces: 10, trayHolds: 4, counted: 10 }, 8).keptStrokes).toBe(2);
  });
});

describe('any tally', () => {
  const task = fc.record(
    { pieces: fc.integer({ min: 1, max: 400 }), trayHolds: fc.integer({ min: 2, max: 60 }) },
    { requiredKeys: ['pieces'] },
  );

  it('comes to just the pieces that there are, with one tap for each tray', () => {
    fc.assert(
      fc.property(task, (asked) => {
        const counts = tapped(asked);
        expect(counts.at(-1)).toBe(asked.pieces);
        expect(counts.length - 1).toBe(Math.ceil(asked.pieces / (asked.trayHolds ?? 1)));
      }),
    );
  });

  it('is taken back step by step to where it was', () => {
    fc.assert(
      fc.property(task, (asked) => {
        const counts = tapped(asked);
        for (const [n, counted] of counts.entries()) {
          if (n > 0) expect(tallyOf({ ...asked, counted }, 0).before).toBe(counts[n - 1]);
        }
      }),
    );
  });
});

describe('the chicken of the demo', () => {
  const { built, catalogue } = plan;
  const holds = must(catalogue.cuts.find(({ id }) => id === 'chicken-half')?.trayHolds, 'a tray');
  const batch = must(
    built.batches.find(({ cut }) => cut === 'chicken-half'),
    'chicken',
  );
  const { id, station, pieces } = must(
    built.tasks.find((task) => task.batch === batch.id && task.work === 'hands'),
    'its first task',
  );
  const at = after(built.origin, minutes(1));

  it('is counted by the tray at its wall, and by the piece on record', () => {
    const day = new Telling();
    day.keep({ kind: 'taskStarted', task: id, hand: null }, at, null);
    const view = viewOf(openLive(day.state, at), { kind: 'station', station }) as StationView;
    const line = must(
      view.tasks.find((task) => task.id === id),
      id,
    );
    expect(line).toMatchObject({ trayHolds: holds, counted: 0 });
    const done = tallyOf(line, 0).next;
    const command = {
      kind: 'count',
      ...{ task: id, done, id: 'a-tap' as CommandId },
      ...{ personId: null, screenId: null, tappedAt: at },
    } as const;
    const drawn = overlay(view, [{ command, mark: 'here' }]).view.tasks;
    expect(drawn.find((task) => task.id === id)?.counted).toBe(Math.min(holds, pieces));
    expect(day.ask(command, at).ok).toBe(true);
    expect(day.events.at(-1)).toMatchObject({ kind: 'piecesCounted', done });
  });
});
