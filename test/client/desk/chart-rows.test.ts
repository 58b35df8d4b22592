// @vitest-environment happy-dom
import { render } from 'lit';
import { describe, expect, it } from 'vitest';
import { headDrawing, headSizes } from '../../../client/desk/chart-heads.ts';
import { cutTo, shorter, wordsPx } from '../../../client/desk/chart-letters.ts';
import type { Paper } from '../../../client/desk/chart-paper.ts';
import type { TaskId } from '../../../shared/kernel/index.ts';
import type { ChartBar, ChartRow, LaidRow } from '../../../shared/view/index.ts';
import type { Language } from '../../../shared/words/index.ts';
import { at, NOW, stationView, theo } from '../fixtures.ts';

const { zone, clock, temperature, weight, people } = stationView;
const rows = people.map((person): ChartRow => {
  return { kind: 'hand', person: { ...person, isOut: person.id === theo } };
});

function paperIn(language: Language, over: Partial<Paper> = {}): Paper {
  return {
    window: { from: at(-60), to: at(60) },
    ...{ drawnPx: 740, seenPx: [0, 740] },
    ...{ headPx: 460, doingPx: 120, widthPx: 1200, lanePx: 30, letterPx: 16 },
    now: NOW,
    chained: new Set(),
    picked: null,
    batches: [],
    say: { language, zone, clock, temperature, weight },
    ...over,
  };
}

const trim: ChartBar = {
  id: 'ribs/trim' as TaskId,
  rows: [0],
  work: 'hands',
  title: { en: 'Trim spare ribs', es: 'Limpie las costillas' },
  ...{ batch: 0, pieces: 8, piece: 0 },
  state: 'waiting',
  plannedStartAt: null,
  startAt: at(20),
  endAt: at(35),
  ranges: [],
  because: null,
};

function headsOf(laid: readonly Pick<LaidRow, 'row' | 'doing'>[], paper: Paper): Element {
  const sheet = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  render(
    laid.map((row, top) => headDrawing(paper, { lanes: 1, bars: [], ...row, top })),
    sheet,
  );
  return sheet;
}

const textsOf = (sheet: Element, selector: string) =>
  [...sheet.querySelectorAll(selector)].map(({ textContent }) => textContent?.trim());

describe('the head of a row', () => {
  it.each([
    ['en', 'Theo · out'],
    ['es', 'Theo · fuera'],
  ] as const)('says that a hand is out (%s)', (language, said) => {
    const heads = headsOf(
      rows.map((row) => ({ row, doing: [null] })),
      paperIn(language),
    );
    expect(textsOf(heads, '.name')).toEqual(['Ines', said, 'Mara']);
  });

  it.each([
    ['en', ['Trim spare ribs till', 'Trim spare ribs', 'nothing more planned']],
    ['es', ['Limpie las costillas hasta', 'Limpie las costillas', 'nada más previsto']],
  ] as const)('says till when somebody is at what, or what comes next (%s)', (language, said) => {
    const doing = [{ ...trim, state: 'running' as const }, trim, null];
    const heads = headsOf(
      rows.map((row, i) => ({ row, doing: [doing[i] ?? null] })),
      paperIn(language),
    );
    const [runs, waits, none] = textsOf(heads, '.doing');
    expect(runs).toMatch(new RegExp(`^${said[0]} \\d+:\\d\\d`));
    expect(waits).toMatch(new RegExp(`^\\d+:\\d\\d.* ?${said[1]}$`));
    expect(none).toBe(said[2]);
  });

  it('keeps the time where there is no room for the whole title', () => {
    const paper = paperIn('en', { headPx: 290 });
    const [row] = rows;
    if (!row) throw new Error('a row');
    const heads = headsOf([{ row, doing: [{ ...trim, state: 'running' }] }], paper);
    expect(textsOf(heads, '.doing')[0]).toMatch(/^Trim till \d+:\d\d/);
  });

  it('is one line for all who have nothing more to do', () => {
    const heads = headsOf([{ row: { kind: 'idleHands', rows }, doing: [] }], paperIn('en'));
    expect(textsOf(heads, '.idle')).toEqual(['Nothing more planned: Ines, Theo · out, Mara']);
  });

  it('leaves most of a phone to the day, with what is done under the name', () => {
    const { headPx, doingPx } = headSizes(rows, { ...paperIn('en'), widthPx: 390 }, true);
    expect(headPx).toBeLessThan(390 / 2);
    expect(doingPx).toBe(0);
  });
});

describe('words that have no room', () => {
  it('are cut between words, with a sign, or down to what is to be done', () => {
    expect(shorter('Take spare ribs out and pat dry')).toEqual([
      'Take spare ribs out and pat dry',
      'Take spare ribs out and pat…',
      'Take spare ribs out…',
      'Take spare ribs…',
      'Take spare…',
      'Take',
    ]);
  });

  it('of a batch lose first for which service it is', () => {
    expect(shorter('Burnt ends · Dinner')).toEqual(['Burnt ends · Dinner', 'Burnt ends', 'Burnt…']);
  });

  it('of a name that is too long end in a sign', () => {
    const cut = cutTo('Maximiliana Vandermeer', 120, 16);
    expect(cut).toMatch(/^Maxi.*…$/);
    expect(wordsPx(cut, 16, 'name')).toBeLessThanOrEqual(120);
    expect(cutTo('Ines', 120, 16)).toBe('Ines');
  });
});
