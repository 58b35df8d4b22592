import { describe, expect, it } from 'vitest';
import type { ActivityId } from '../../shared/kernel/index.ts';
import { must, seconds } from '../../shared/kernel/index.ts';
import type { GoalId, Problem, Schedule } from '../../shared/schedule/index.ts';
import { check, construct, createTimeline } from '../../shared/schedule/index.ts';

/**
 * The critical-path network of a textbook: Heizer and Render, Operations Management, chapter
 * Project Management, the paper mill's eight activities. The data are from memory; the arithmetic
 * was done again by hand. One week is one second here.
 */
const weeks: Readonly<Record<string, number>> = { A: 2, B: 3, C: 2, D: 4, E: 4, F: 3, G: 5, H: 2 };
const before: Readonly<Record<string, string>> = {
  C: 'A',
  D: 'B',
  E: 'C',
  F: 'C',
  G: 'DE',
  H: 'FG',
};
const WHOLE_S = seconds(15);

/** Earliest start and end, latest start and end, as printed. */
const printed: Readonly<Record<string, readonly [number, number, number, number]>> = {
  A: [0, 2, 0, 2],
  B: [0, 3, 1, 4],
  C: [2, 4, 2, 4],
  D: [3, 7, 4, 8],
  E: [4, 8, 4, 8],
  F: [4, 7, 10, 13],
  G: [8, 13, 8, 13],
  H: [13, 15, 13, 15],
};

const id = (name: string) => name as ActivityId;
const goal = 'done' as GoalId;

function network(dueS = WHOLE_S): Problem {
  return {
    horizonS: seconds(40),
    activities: Object.entries(weeks).map(([name, length]) => {
      const lengthS = seconds(length);
      const work = { kind: 'work', typicalS: lengthS, lowS: lengthS, highS: lengthS } as const;
      return { id: id(name), modes: [{ id: 'only', length: work, needs: [], states: [] }] };
    }),
    lags: Object.entries(before).flatMap(([name, those]) =>
      [...those].map((other) => ({
        from: { activity: id(other), end: 'end' as const },
        to: { activity: id(name), end: 'start' as const },
        minS: seconds(0),
        reason: 'step',
      })),
    ),
    resources: [],
    clashes: [],
    goals: [{ id: goal, activity: id('H'), end: 'end', dueS, weight: 1 }],
  };
}

/** Everything as early as it can be. */
const earliest: Schedule = {
  placements: Object.entries(printed).map(([name, [start, end]]) => ({
    activity: id(name),
    mode: 'only',
    startS: seconds(start),
    endS: seconds(end),
    uses: [],
  })),
  links: [],
};

describe('the paper mill of Heizer and Render', () => {
  const timeline = createTimeline(network(), earliest);

  it('has the earliest and latest times that are printed, and the slack between them', () => {
    for (const [name, [es, ef, ls, lf]] of Object.entries(printed)) {
      const { startS, endS, latestStartS, latestEndS, slackS } = timeline.times(id(name));
      expect([name, startS, endS, latestStartS, latestEndS]).toEqual([name, es, ef, ls, lf]);
      expect([name, slackS]).toEqual([name, ls - es]);
    }
  });

  it('has the critical path A–C–E–G–H', () => {
    const chain = timeline.criticalChain(goal).map(({ activity }) => activity);
    expect([...new Set(chain)]).toEqual(['A', 'C', 'E', 'G', 'H'].map(id));
  });

  it('takes fifteen weeks: it can be planned to end then, and not a week sooner', () => {
    const planned = construct(network(), { seed: 1 });
    expect(planned.ok && check(network(), planned.schedule)).toEqual([]);
    const placed = must(planned.ok ? planned.schedule : null, 'a schedule').placements;
    const latest = Object.entries(printed).map(([name, [, , ls]]) => [name, ls]);
    expect(placed.map(({ activity, startS }) => [activity, startS]).sort()).toEqual(latest);
    const sooner = construct(network(seconds(14)), { seed: 1 });
    expect(sooner).toMatchObject({ ok: false, conflicts: [{ shortS: 1 }] });
  });
});
