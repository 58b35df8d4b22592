import { describe, expect, it } from 'vitest';
import { openLive } from '../../../shared/day/index.ts';
import { after, instant, minutes, must } from '../../../shared/kernel/index.ts';
import type { ChartBar, DayChart, DeskView } from '../../../shared/view/index.ts';
import {
  barUnder,
  chainLinks,
  lanesOf,
  layRows,
  rowsInView,
  viewOf,
  whyOf,
  wouldBeBars,
} from '../../../shared/view/index.ts';
import { noon, plan, Telling } from '../day/demo.ts';

const telling = new Telling();
const deskAt = (now = noon): DeskView => {
  const view = viewOf(openLive(telling.state, now), { kind: 'desk' });
  if (view.face !== 'desk') throw new Error('a desk was asked for');
  return view;
};
const { chart } = deskAt(plan.built.origin);
const barOf = ({ bars }: DayChart, id: string): ChartBar =>
  must(
    bars.find((bar) => bar.id === id),
    id,
  );

describe('the chart of the day', () => {
  it('has a row for each hand and each rack, and a bar for every task of the plan', () => {
    const { crew, smokers } = plan.kitchen;
    const racks = smokers.flatMap((smoker) => smoker.racks);
    expect(chart.rows).toHaveLength(crew.length + racks.length);
    expect(chart.bars).toHaveLength(plan.built.tasks.length);
  });

  it('puts the work of hands with who does it, and a stay in its rack', () => {
    const rowless = chart.bars.filter(({ rows }) => rows.length === 0).map(({ work }) => work);
    expect(new Set(rowless)).toEqual(new Set(['wait', 'fire']));
    for (const { work, rows } of chart.bars) {
      const kind = { hands: 'hand', place: 'rack', wait: undefined, fire: undefined }[work];
      for (const row of rows) expect(chart.rows[row]?.kind).toBe(kind);
    }
  });

  it('draws the doubt of a cook on its stay', () => {
    const stays = chart.bars.filter(({ work }) => work === 'place');
    expect(stays.filter(({ ranges }) => ranges.length > 0)).not.toEqual([]);
    for (const { lowAt, at, highAt } of stays.flatMap(({ ranges }) => ranges)) {
      expect(lowAt).toBeLessThan(highAt);
      expect(at).toBeGreaterThanOrEqual(lowAt);
      expect(at).toBeLessThanOrEqual(highAt);
    }
  });

  it('has for each service the chain it hangs on, from first to last', () => {
    expect(chart.chains.map(({ service }) => service)).toEqual(
      plan.built.services.map(({ id }) => id),
    );
    for (const { tasks } of chart.chains) {
      const starts = tasks.map((id) => barOf(chart, id).startAt);
      expect(starts.length).toBeGreaterThan(1);
      expect(starts).toEqual([...starts].sort((a, b) => a - b));
    }
  });
});

describe('what is drawn of it', () => {
  const rows = layRows(chart);

  it('never lays one bar over another in the same lane', () => {
    for (const { bars } of rows) {
      for (const { bar, lane } of bars) {
        const over = bars.filter(
          (other) =>
            other.bar !== bar &&
            other.lane === lane &&
            other.bar.startAt < bar.endAt &&
            bar.startAt < other.bar.endAt,
        );
        expect(over).toEqual([]);
      }
    }
  });

  it('is only what reaches into the window and the rows in sight', () => {
    const window = { from: noon, to: after(noon, minutes(60)) };
    const shown = rowsInView(rows, window, [0, 3]);
    expect(shown.length).toBeLessThan(rows.length);
    const bars = shown.flatMap((row) => row.bars);
    expect(bars.length).toBeGreaterThan(0);
    expect(bars.length).toBeLessThan(chart.bars.length);
    for (const { bar } of bars) expect(bar.startAt).toBeLessThan(window.to);
  });

  it('joins the bars of a chain over what has no row', () => {
    const [chain] = chart.chains;
    const drawn = must(chain, 'a chain').tasks.filter((id) => barOf(chart, id).rows.length > 0);
    const links = chainLinks(rows, drawn);
    expect(links).toHaveLength(drawn.length - 1);
    for (const { from, to } of links) expect(from.bar.startAt).toBeLessThanOrEqual(to.bar.startAt);
  });
});

describe('what would be, beside what is', () => {
  const [one, two] = chart.bars.filter(({ work }) => work === 'hands');
  const [trim, coat] = [must(one, 'a task'), must(two, 'another')];
  const otherRow = trim.rows[0] === 0 ? 1 : 0;
  const other = must(chart.rows[otherRow], 'a hand');
  const owners = other.kind === 'hand' ? [other.person.id] : [];
  const times = {
    startAt: after(trim.startAt, minutes(20)),
    endAt: after(trim.endAt, minutes(20)),
  };
  const instead = wouldBeBars(chart, [{ task: trim.id, owners, ...times }]);
  const was = layRows(chart);
  const rows = layRows(chart, undefined, undefined, instead);

  it('lies in lanes of its own, under all that is, in the row of who would do it', () => {
    const under = rows.flatMap(({ row, bars }) =>
      bars.flatMap((laid) => (laid.isWouldBe ? [{ row, bars, ...laid }] : [])),
    );
    expect(under.map(({ bar, row }) => ({ id: bar.id, row }))).toEqual([
      { id: trim.id, row: other },
    ]);
    const [laid] = under;
    expect(laid?.bar).toMatchObject(times);
    const lanes = laid?.bars.flatMap((each) => (each.isWouldBe ? [] : each.lane)) ?? [];
    expect(laid?.lane).toBe(1 + Math.max(...lanes));
    expect(lanesOf(rows)).toBe(lanesOf(was) + 1);
  });

  it('leaves all that is where it is, and the chain on that', () => {
    const isOf = (laid: typeof rows) =>
      laid.map(({ row, bars }) => ({ row, bars: bars.filter(({ isWouldBe }) => !isWouldBe) }));
    expect(isOf(rows)).toEqual(isOf(was));
    const links = chainLinks(rows, [trim.id, coat.id]);
    expect(links[0]?.from.bar).toBe(trim);
  });

  it('is not drawn of what has begun meanwhile', () => {
    const bars = chart.bars.map((bar) => ({ ...bar, state: 'running' as const }));
    expect(wouldBeBars({ ...chart, bars }, [{ task: trim.id, owners, ...times }])).toEqual([]);
  });
});

describe('the rows of a day that is half over', () => {
  const done = { ...chart, bars: chart.bars.map((bar) => ({ ...bar, state: 'done' as const })) };
  const lastOf = (row: number) =>
    Math.max(...chart.bars.filter(({ rows }) => rows.includes(row)).map(({ endAt }) => endAt));
  const namesOf = (rows: ReturnType<typeof layRows>) =>
    rows.flatMap(({ row }) => (row.kind === 'hand' ? row.person.name : []));

  it('have in one line all who have nothing more, and in another all racks', () => {
    const laid = layRows(done, noon);
    for (const { row, bars } of laid) {
      if ('rows' in row) expect(bars).toEqual([]);
      else expect(bars.length).toBeGreaterThan(0);
    }
    const folded = laid.flatMap(({ row }) => ('rows' in row ? row.rows : []));
    const ended = chart.rows.filter((_, place) => lastOf(place) <= noon);
    expect(folded).toEqual(ended);
    expect(laid.filter(({ row }) => 'rows' in row).length).toBeLessThanOrEqual(2);
  });

  it('keep their places when older hours come into sight', () => {
    const now = namesOf(layRows(done, noon));
    const before = namesOf(layRows(done, noon, plan.built.origin));
    expect(before.slice(0, now.length)).toEqual(now);
    expect(before.length).toBeGreaterThan(now.length);
  });

  it('say what is under way, or else what comes next', () => {
    for (const { bars, doing } of layRows(deskAt(noon).chart)) {
      for (const [lane, bar] of doing.entries()) {
        const own = bars.filter((laid) => laid.lane === lane).map((laid) => laid.bar);
        const open = own.filter(({ state }) => state !== 'done');
        const runs = open.some(({ state }) => state === 'running');
        expect(bar).toBe(runs ? open.findLast(({ state }) => state === 'running') : open[0]);
      }
    }
  });
});

describe('a finger on the chart', () => {
  const rows = layRows(chart);
  const hand = must(
    rows.find(({ bars }) => bars.length > 3),
    'a row',
  );
  const last = must(hand.bars.at(-1), 'a bar');

  it('means the nearest task of the row, as far as it is wide', () => {
    const beside = instant(last.bar.endAt + 4 * 60_000);
    const reach = 5 * 60_000;
    expect(barUnder(rows, hand.top + last.lane + 0.5, beside, reach)).toBe(last.bar);
    expect(barUnder(rows, hand.top + last.lane + 0.5, beside, reach / 2)).toBe(null);
  });

  it('means nothing below the last row', () => {
    expect(barUnder(rows, lanesOf(rows) + 1, last.bar.startAt, 60_000)).toBe(null);
  });
});

describe('why a task is when it is', () => {
  it('is followed from what it waits for to what that waits for', () => {
    // Nobody has tapped anything by noon: the day has been put off, one thing by another.
    const late = deskAt(noon).chart;
    const waiting = must(
      late.bars.find(({ because }) => because?.kind === 'after'),
      'a task that waits for another',
    );
    const [first, second] = whyOf(late, waiting.id);
    expect(first).toBe(waiting);
    const { because } = waiting;
    expect(second?.id).toBe(because?.kind === 'after' ? because.task.id : null);
  });

  it('ends with what nothing else moves, and is nothing for what is not there', () => {
    for (const bar of chart.bars) expect(whyOf(chart, bar.id).length).toBeLessThanOrEqual(6);
    expect(whyOf({ bars: [] }, must(chart.bars[0], 'a bar').id)).toEqual([]);
  });
});

describe('the desk', () => {
  it('pulls first what must be out first', () => {
    const by = deskAt().pull.map(({ byAt }) => byAt);
    expect(by.length).toBeGreaterThan(0);
    expect(by).toEqual([...by].sort((a, b) => a - b));
    expect(Math.min(...by)).toBeGreaterThanOrEqual(instant(plan.built.origin));
  });
});
