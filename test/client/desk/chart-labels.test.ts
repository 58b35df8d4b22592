// @vitest-environment happy-dom
import { describe, expect, it } from 'vitest';
import { labelsOf } from '../../../client/desk/chart-labels.ts';
import { acrossPx, type Paper } from '../../../client/desk/chart-paper.ts';
import type { TaskId } from '../../../shared/kernel/index.ts';
import type { ChartBar, LaidRow } from '../../../shared/view/index.ts';
import { at, NOW, stationView } from '../fixtures.ts';

const { zone, clock, temperature, weight, people } = stationView;

/** Ten pixels a minute. */
const paper: Paper = {
  window: { from: at(0), to: at(120) },
  ...{ drawnPx: 1200, seenPx: [0, 1200] },
  ...{ headPx: 0, doingPx: 0, widthPx: 1200, lanePx: 30, letterPx: 16 },
  now: NOW,
  chained: new Set(),
  picked: null,
  batches: [],
  say: { language: 'en', zone, clock, temperature, weight },
};

const bar = (title: string, from: number, to: number, over: Partial<ChartBar> = {}): ChartBar => ({
  id: `${title}@${from}` as TaskId,
  rows: [0],
  work: 'hands',
  title: { en: title, es: title },
  ...{ batch: 0, pieces: 0, piece: 0 },
  state: 'waiting',
  plannedStartAt: null,
  startAt: at(from),
  endAt: at(to),
  ranges: [],
  because: null,
  ...over,
});

function labelled(...bars: readonly ChartBar[]) {
  return labelledOn(paper, ...bars);
}

function labelledOn(on: Paper, ...bars: readonly ChartBar[]) {
  const [person] = people;
  if (!person) throw new Error('a person');
  const row: LaidRow = {
    row: { kind: 'hand', person },
    ...{ top: 0, lanes: 1, doing: [null] },
    bars: bars.map((each) => ({ bar: each, lane: 0 })),
  };
  return labelsOf(on, row);
}

const wordsOf = (...bars: readonly ChartBar[]) => labelled(...bars).map(({ words }) => words);

describe('the names on the chart', () => {
  it('stand in a task that is wide enough', () => {
    const [label] = labelled(bar('Trim ribs', 0, 30));
    expect(label).toMatchObject({ words: 'Trim ribs', isInside: true });
  });

  it('stand beside a task that is narrower than they are, where nothing else is', () => {
    const [label] = labelled(bar('Feed wood', 10, 12), bar('Trim shoulders', 40, 70));
    expect(label).toMatchObject({ words: 'Feed wood', isInside: false });
    expect(label?.x).toBeGreaterThan(acrossPx(paper, at(12)));
  });

  it('never reach to the next task', () => {
    const labels = labelled(bar('Weigh out the rib rub', 10, 12), bar('Feed wood', 23, 25));
    const [first] = labels;
    expect(first?.words).toBe('Weigh out…');
    expect((first?.x ?? 0) + (first?.widePx ?? 0)).toBeLessThan(acrossPx(paper, at(23)));
  });

  it('are one for a run of tasks too narrow for any', () => {
    const run = [bar('Coat ribs', 10, 12), bar('Rub ribs', 12, 15), bar('Load ribs', 15, 17)];
    expect(wordsOf(...run)).toEqual(['Coat, rub, load']);
    expect(wordsOf(bar('Feed wood', 10, 12), bar('Feed wood', 12, 14))).toEqual(['Feed wood']);
  });

  it('say with a sign that a run has more than they name', () => {
    const run = [bar('Coat ribs', 10, 12), bar('Rub ribs', 12, 15), bar('Load ribs', 15, 17)];
    expect(wordsOf(...run, bar('Trim shoulders', 28, 60))[0]).toBe('Coat, rub…');
  });

  it('of what a service waits for do not stand over what it does not wait for', () => {
    const [coat, rub] = [bar('Coat ribs', 10, 12), bar('Rub ribs', 12, 15)];
    const on = { ...paper, chained: new Set([rub.id]) };
    expect(labelledOn(on, coat, rub).map(({ words }) => words)).toEqual(['Rub ribs']);
  });

  it('are left out rather than cut within a word', () => {
    expect(wordsOf(bar('Sanitise', 10, 12), bar('Trim shoulders', 14, 44))).toEqual([
      'Trim shoulders',
    ]);
  });

  it('say in a smoker for what service it cooks', () => {
    const stay = bar('Ribs in the smoker', 0, 60, { work: 'place' });
    const batches = [{ en: 'Ribs · Lunch', es: 'Costillas · Almuerzo' }];
    const [person] = people;
    if (!person) throw new Error('a person');
    const row: LaidRow = {
      row: { kind: 'hand', person },
      ...{ top: 0, lanes: 1, doing: [null], bars: [{ bar: stay, lane: 0 }] },
    };
    expect(labelsOf({ ...paper, batches }, row)[0]?.words).toBe('Ribs · Lunch');
  });
});
