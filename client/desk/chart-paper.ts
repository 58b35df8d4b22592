import type { Instant, TaskId } from '../../shared/kernel/index.ts';
import type { ChartBar, ChartRange, ChartWindow, DayChart } from '../../shared/view/index.ts';
import { placeIn } from '../../shared/view/index.ts';
import type { Say } from '../../shared/words/index.ts';
import { textIn } from '../../shared/words/index.ts';

/** Where everything lies on the paper, in pixels. */
export type Paper = {
  readonly window: ChartWindow;
  /** Of what stands at the left: who, and what they do. */
  readonly headPx: number;
  /** Where in it stands what they do: beside the names, or at nought under them. */
  readonly doingPx: number;
  readonly widthPx: number;
  readonly lanePx: number;
  /** How high the letters are. */
  readonly letterPx: number;
  readonly now: Instant;
  /** What any service hangs on. */
  readonly chained: ReadonlySet<TaskId>;
  readonly picked: TaskId | null;
  readonly batches: DayChart['batches'];
  readonly say: Say;
};

/** Of a lane's height. */
export const BAR_SHARE = 0.72;

export const acrossPx = ({ window, headPx, widthPx }: Paper, at: Instant): number =>
  headPx + placeIn(window, at) * (widthPx - headPx);

/** Bars reach a little over the edges, not for hours: some engines draw long strokes badly. */
const clamped = (paper: Paper, px: number): number =>
  Math.min(paper.widthPx + 20, Math.max(paper.headPx - 20, px));

export const clampedPx = (paper: Paper, at: Instant): number => clamped(paper, acrossPx(paper, at));

export type Place = {
  readonly x: number;
  readonly y: number;
  readonly wide: number;
  readonly high: number;
};

export function placeOf(paper: Paper, bar: ChartBar, lane: number): Place {
  const x = clampedPx(paper, bar.startAt);
  const wide = Math.max(2, clampedPx(paper, bar.endAt) - x);
  const high = paper.lanePx * BAR_SHARE;
  return { x, y: (lane + (1 - BAR_SHARE) / 2) * paper.lanePx, wide, high };
}

/** A hand's minutes of doubt only where somebody looks: at what runs, and at what is picked. */
export function rangesShown(
  { picked }: Paper,
  { id, work, state, ranges }: ChartBar,
): readonly ChartRange[] {
  if (state === 'done') return [];
  return work === 'hands' && state === 'waiting' && picked !== id ? [] : ranges;
}

/** In a smoker's row that it is in the smoker need not be said: there it says what for. */
export function titleOf({ batches, say }: Pick<Paper, 'batches' | 'say'>, bar: ChartBar): string {
  const batch = bar.work === 'place' ? batches[bar.batch] : undefined;
  return textIn(batch ?? bar.title, say);
}
