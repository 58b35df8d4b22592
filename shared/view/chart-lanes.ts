import type { Instant, TaskId } from '../kernel/index.ts';
import { instant } from '../kernel/index.ts';
import type { ChartWindow } from './chart-window.ts';
import type { ChartBar, ChartRow, DayChart } from './day-chart.ts';

/** A row as it is drawn: `top` and `lanes` count lanes, whatever a lane is high. */
export type LaidRow = {
  readonly row: ChartRow | IdleRow;
  readonly top: number;
  readonly lanes: number;
  readonly bars: readonly LaidBar[];
  /** In each lane what is under way, or else comes next; null where nothing more does. */
  readonly doing: readonly (ChartBar | null)[];
};

export type LaidBar = {
  readonly bar: ChartBar;
  readonly lane: number;
  /** Not where it is: where it would be. */
  readonly isWouldBe?: true;
};

/** Who, or which racks, have nothing in sight: one line for all, behind the others. */
export type IdleRow = {
  readonly kind: 'idleHands' | 'idleRacks';
  readonly rows: readonly ChartRow[];
};

/**
 * The rows one under the other, hands before racks; what overlaps in a row lies in lanes of its
 * own, and under them in others what would be there. What ended before the sooner of `since` and
 * `sight` is left out. Who has nothing after `since` comes behind those who have, and with nothing
 * at all is only named: so no row of one who still works moves to another place when older hours
 * come into sight.
 */
export function layRows(
  { rows, bars }: Pick<DayChart, 'rows' | 'bars'>,
  since: Instant = instant(Number.NEGATIVE_INFINITY),
  sight: Instant = since,
  wouldBe: readonly ChartBar[] = [],
): LaidRow[] {
  const from = Math.min(since, sight);
  const filled = rows.map((row, place) => {
    const isHere = (bar: ChartBar) => bar.rows.includes(place) && farEnd(bar) > from;
    const [own, instead] = [bars.filter(isHere), wouldBe.filter(isHere)];
    const lastAt = Math.max(Number.NEGATIVE_INFINITY, ...[...own, ...instead].map(farEnd));
    return { row, own, instead, lastAt };
  });
  const ordered = (['hand', 'rack'] as const).flatMap((kind) => {
    const all = filled.filter(({ row }) => row.kind === kind);
    const idle = all.filter(({ lastAt }) => lastAt <= from);
    const shown = all.filter((each) => !idle.includes(each));
    const isBusy = ({ lastAt }: { lastAt: number }) => lastAt > since;
    return [
      ...[...shown.filter(isBusy), ...shown.filter((each) => !isBusy(each))].map(
        ({ row, own, instead }) => laidRow(row, layLanes(own), layLanes(instead)),
      ),
      ...(idle.length > 0 ? [idleRow(kind, idle)] : []),
    ];
  });
  let top = 0;
  return ordered.map((row) => {
    const laid = { ...row, top };
    top += row.lanes;
    return laid;
  });
}

/** How many lanes all of them take. */
export const lanesOf = (rows: readonly LaidRow[]): number => {
  const last = rows.at(-1);
  return last ? last.top + last.lanes : 0;
};

type Unplaced = Omit<LaidRow, 'top'>;

function laidRow(row: ChartRow, bars: readonly LaidBar[], instead: readonly LaidBar[]): Unplaced {
  const lanes = lanesIn(bars);
  const doing = Array.from({ length: lanes }, (_, lane) =>
    doingOf(bars.flatMap((laid) => (laid.lane === lane ? laid.bar : []))),
  );
  if (instead.length === 0) return { row, lanes, bars, doing };
  const under = instead.map(
    ({ bar, lane }): LaidBar => ({ bar, lane: lanes + lane, isWouldBe: true }),
  );
  return { row, lanes: lanes + lanesIn(instead), bars: [...bars, ...under], doing };
}

const lanesIn = (bars: readonly LaidBar[]): number =>
  1 + Math.max(0, ...bars.map(({ lane }) => lane));

const idleRow = (
  kind: ChartRow['kind'],
  idle: readonly { readonly row: ChartRow }[],
): Unplaced => ({
  row: { kind: kind === 'hand' ? 'idleHands' : 'idleRacks', rows: idle.map(({ row }) => row) },
  lanes: 1,
  bars: [],
  doing: [],
});

const doingOf = (bars: readonly ChartBar[]): ChartBar | null =>
  bars.findLast(({ state }) => state === 'running') ??
  bars.find(({ state }) => state !== 'done') ??
  null;

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

/**
 * The doubt of a rack's end takes room until it has ended; a hand's next task may well lie over
 * that of the last.
 */
const farEnd = ({ work, state, endAt, ranges }: ChartBar): number =>
  work === 'hands' || state === 'done'
    ? endAt
    : Math.max(endAt, ...ranges.map(({ highAt }) => highAt));

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
 * nearest in its lane, or else in its row, no further off than `withinMs`, since many are narrower
 * than a finger.
 */
export function barUnder(
  rows: readonly LaidRow[],
  height: number,
  at: Instant,
  withinMs: number,
): ChartBar | null {
  const row = rows.find(({ top, lanes }) => height >= top && height < top + lanes);
  const away = ({ bar }: LaidBar) => Math.max(0, bar.startAt - at, at - bar.endAt);
  const off = ({ lane }: LaidBar) => Math.abs(lane - Math.floor(height - (row?.top ?? 0)));
  const near = (row?.bars ?? [])
    .filter((laid) => away(laid) <= withinMs)
    .sort((a, b) => off(a) - off(b) || away(a) - away(b));
  return near[0]?.bar ?? null;
}

/** Where a chain goes from bar to bar, over those that have no row. */
export type ChainLink = { readonly from: LaidAt; readonly to: LaidAt };
type LaidAt = { readonly bar: ChartBar; readonly lane: number };

/** The strokes that join the bars of a chain; `lane` counts from the top of the chart. */
export function chainLinks(rows: readonly LaidRow[], chain: readonly TaskId[]): ChainLink[] {
  const laid = new Map<TaskId, LaidAt>();
  for (const { top, bars } of rows) {
    for (const { bar, lane, isWouldBe } of bars) {
      if (!isWouldBe && !laid.has(bar.id)) laid.set(bar.id, { bar, lane: top + lane });
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
