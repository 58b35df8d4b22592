import type { Instant, TaskId } from '../kernel/index.ts';
import type { ChartWindow } from './chart-window.ts';
import type { ChartBar, ChartRow, DayChart } from './day-chart.ts';

/** A row as it is drawn: `top` and `lanes` count lanes, whatever a lane is high. */
export type LaidRow = {
  readonly row: ChartRow;
  readonly top: number;
  readonly lanes: number;
  readonly bars: readonly LaidBar[];
};

export type LaidBar = { readonly bar: ChartBar; readonly lane: number };

/** The rows one under the other; what overlaps in a row lies in lanes of its own. */
export function layRows({ rows, bars }: Pick<DayChart, 'rows' | 'bars'>): LaidRow[] {
  let top = 0;
  return rows.map((row, place) => {
    const laid = layLanes(bars.filter((bar) => bar.rows.includes(place)));
    const lanes = 1 + Math.max(0, ...laid.map(({ lane }) => lane));
    const laidRow = { row, top, lanes, bars: laid };
    top += lanes;
    return laidRow;
  });
}

/** Each bar in the first lane that is free by its start; `bars` come by their starts. */
function layLanes(bars: readonly ChartBar[]): LaidBar[] {
  const busyTill: number[] = [];
  return bars.map((bar) => {
    const free = busyTill.findIndex((till) => till <= bar.startAt);
    const lane = free === -1 ? busyTill.length : free;
    busyTill[lane] = farEnd(bar);
    return { bar, lane };
  });
}

/** The doubt of a rack's end takes room; a hand's next task may well lie over that of the last. */
const farEnd = ({ work, endAt, ranges }: ChartBar): number =>
  work === 'hands' ? endAt : Math.max(endAt, ...ranges.map(({ highAt }) => highAt));

/** The rows between two heights, in lanes, each with the bars that reach into the window. */
export function rowsInView(
  rows: readonly LaidRow[],
  window: ChartWindow,
  [fromLane, toLane]: readonly [number, number],
): LaidRow[] {
  return rows
    .filter(({ top, lanes }) => top < toLane && top + lanes > fromLane)
    .map((row) => ({
      ...row,
      bars: row.bars.filter(({ bar }) => bar.startAt < window.to && farEnd(bar) > window.from),
    }));
}

/**
 * The bar that a finger means which comes down at that height, in lanes, and at that time: the
 * nearest in its lane, no further off than `withinMs`, since many are narrower than a finger.
 */
export function barUnder(
  rows: readonly LaidRow[],
  height: number,
  at: Instant,
  withinMs: number,
): ChartBar | null {
  const row = rows.find(({ top, lanes }) => height >= top && height < top + lanes);
  const away = ({ bar }: LaidBar) => Math.max(0, bar.startAt - at, at - bar.endAt);
  const near = (row?.bars ?? [])
    .filter(({ lane }) => lane === Math.floor(height - (row?.top ?? 0)))
    .filter((laid) => away(laid) <= withinMs)
    .sort((a, b) => away(a) - away(b));
  return near[0]?.bar ?? null;
}

/** Where a chain goes from bar to bar, over those that have no row. */
export type ChainLink = { readonly from: LaidAt; readonly to: LaidAt };
type LaidAt = { readonly bar: ChartBar; readonly lane: number };

/** The strokes that join the bars of a chain; `lane` counts from the top of the chart. */
export function chainLinks(rows: readonly LaidRow[], chain: readonly TaskId[]): ChainLink[] {
  const laid = new Map<TaskId, LaidAt>();
  for (const { top, bars } of rows) {
    for (const { bar, lane } of bars) {
      if (!laid.has(bar.id)) laid.set(bar.id, { bar, lane: top + lane });
    }
  }
  const drawn = chain.flatMap((id) => laid.get(id) ?? []);
  return drawn.slice(1).map((to, i) => ({ from: drawn[i] as LaidAt, to }));
}

const MOST_REASONS = 6;

/**
 * Why a bar is where it is: itself, what its start hangs on, what that hangs on, and so on to
 * something that has begun, a time of the plan, or a place that another takes up.
 */
export function whyOf({ bars }: Pick<DayChart, 'bars'>, task: TaskId): ChartBar[] {
  const found: ChartBar[] = [];
  let next: TaskId | undefined = task;
  while (next !== undefined && found.length < MOST_REASONS) {
    const id: TaskId = next;
    const bar = bars.find((each) => each.id === id);
    if (!bar || found.includes(bar)) break;
    found.push(bar);
    next = hangsOn(bar);
  }
  return found;
}

function hangsOn({ because }: ChartBar): TaskId | undefined {
  if (because?.kind === 'after') return because.task.id;
  return because?.kind === 'hand' || because?.kind === 'room' ? because.busyWith.id : undefined;
}

/** The bar before or after in time that has a row; the first or the last where none is picked. */
export function stepFrom(
  { bars }: Pick<DayChart, 'bars'>,
  picked: TaskId | null,
  by: 1 | -1,
): ChartBar | null {
  const drawn = bars.filter(({ rows }) => rows.length > 0);
  const at = drawn.findIndex(({ id }) => id === picked);
  if (at === -1) return drawn.at(by === 1 ? 0 : -1) ?? null;
  return drawn[Math.min(drawn.length - 1, Math.max(0, at + by))] ?? null;
}
