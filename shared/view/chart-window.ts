import type { Instant } from '../kernel/index.ts';
import { instant, wallTime } from '../kernel/index.ts';
import type { DayChart } from './day-chart.ts';

/** The stretch of time that a chart shows. */
export type ChartWindow = { readonly from: Instant; readonly to: Instant };

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;
const OPENING_MS = 9 * HOUR_MS;
/** Less shows nothing but one task. */
const LEAST_MS = 20 * MINUTE_MS;
/** So much of the window lies behind while it follows the clock. */
const BEHIND = 0.2;
/** Room before the first task and after the last. */
const MARGIN_MS = HOUR_MS;

type Day = Pick<DayChart, 'from' | 'to'>;

/** The window that follows the clock: some of what was, most of what comes. */
export function windowAt(now: Instant, day: Day, lengthMs: number = OPENING_MS): ChartWindow {
  return within(now - lengthMs * BEHIND, lengthMs, day);
}

/**
 * The window moved by a share of its own length, as far as the day reaches.
 * @example panned(window, 0.5, day) // the half that was at the right is at the left
 */
export function panned({ from, to }: ChartWindow, byShare: number, day: Day): ChartWindow {
  return within(from + (to - from) * byShare, to - from, day);
}

/**
 * The window made longer or shorter by a factor, about a place in it, from 0 to 1, which stays.
 * @example zoomed(window, 0.5, 0, day) // the left half, twice as wide
 */
export function zoomed(
  { from, to }: ChartWindow,
  factor: number,
  aboutShare: number,
  day: Day,
): ChartWindow {
  const most = day.to - day.from + 2 * MARGIN_MS;
  const lengthMs = Math.min(most, Math.max(LEAST_MS, (to - from) * factor));
  return within(from + (to - from - lengthMs) * aboutShare, lengthMs, day);
}

/** The window moved no further than it takes to show that instant well inside. */
export function showing({ from, to }: ChartWindow, at: Instant, day: Day): ChartWindow {
  const lengthMs = to - from;
  const [first, last] = [from + lengthMs * 0.1, to - lengthMs * 0.25];
  const byMs = at < first ? at - first : at > last ? at - last : 0;
  return within(from + byMs, lengthMs, day);
}

function within(fromMs: number, lengthMs: number, day: Day): ChartWindow {
  const first = day.from - MARGIN_MS;
  const last = Math.max(first, day.to + MARGIN_MS - lengthMs);
  const from = Math.round(Math.min(last, Math.max(first, fromMs)));
  return { from: instant(from), to: instant(from + Math.round(lengthMs)) };
}

/** The window with so much more at each side, as a share of its own length. */
export function widened({ from, to }: ChartWindow, byShare: number): ChartWindow {
  const byMs = Math.round((to - from) * byShare);
  return { from: instant(from - byMs), to: instant(to + byMs) };
}

/** Whether all of `inner` lies in it. */
export const holdsWindow = ({ from, to }: ChartWindow, inner: ChartWindow): boolean =>
  from <= inner.from && inner.to <= to;

/** Where an instant lies in a window: 0 at its beginning, 1 at its end, beyond for what is off. */
export const placeIn = ({ from, to }: ChartWindow, at: Instant): number =>
  (at - from) / (to - from);

const STEPS_MIN = [5, 15, 30, 60, 120, 180, 360, 720, 1440] as const;

/** The finest rule whose strokes stand at least so far apart, as minutes of the wall clock. */
export function ruleStepMin(window: ChartWindow, widthPx: number, apartPx: number): number {
  const pxPerMin = (widthPx * MINUTE_MS) / (window.to - window.from);
  return STEPS_MIN.find((step) => step * pxPerMin >= apartPx) ?? 1440;
}

/**
 * The strokes of a rule over the whole day, on round times of the kitchen's own clock: also where
 * that is half an hour off, and in a night when the clocks change.
 */
export function ruleOf(day: Day, stepMin: number, zone: string): Instant[] {
  const fineMs = Math.min(15, stepMin) * MINUTE_MS;
  const first = Math.floor((day.from - MARGIN_MS) / fineMs) * fineMs;
  const strokes: Instant[] = [];
  for (let at = first; at <= day.to + MARGIN_MS; at += fineMs) {
    if (stepMin <= 15 || minuteOfDay(instant(at), zone) % stepMin === 0) strokes.push(instant(at));
  }
  return strokes;
}

function minuteOfDay(at: Instant, zone: string): number {
  const { time } = wallTime(at, zone);
  return Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5));
}
