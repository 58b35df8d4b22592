import type { Instant, TaskId } from '../../shared/kernel/index.ts';
import type { ChartBar, ChartRange, ChartWindow, DayChart } from '../../shared/view/index.ts';
import { placeIn } from '../../shared/view/index.ts';
import type { Say } from '../../shared/words/index.ts';
import { textIn } from '../../shared/words/index.ts';

/** Of the glass and what is written on it, in pixels. */
export type Sizes = {
  readonly widthPx: number;
  readonly lanePx: number;
  /** How high the letters are. */
  readonly letterPx: number;
  /** Of what stands at the left: who, and what they do. */
  readonly headPx: number;
  /** Where in it stands what they do: beside the names, or at nought under them. */
  readonly doingPx: number;
};

/** Where everything lies on the paper, in pixels. */
export type Paper = Sizes & {
  /** What is drawn of the day, beside the heads, and how wide it is. */
  readonly window: ChartWindow;
  readonly drawnPx: number;
  /** From where to where of that is seen: while it is moved, more is drawn. */
  readonly seenPx: readonly [fromPx: number, toPx: number];
  readonly now: Instant;
  /** What any service hangs on. */
  readonly chained: ReadonlySet<TaskId>;
  readonly picked: TaskId | null;
  readonly batches: DayChart['batches'];
  readonly say: Say;
};

/** The paper on which `window` is drawn, of which `seen` fills the glass beside the heads. */
export function paperOf(
  { chains, batches }: DayChart,
  { window, seen }: { readonly window: ChartWindow; readonly seen: ChartWindow },
  given: Sizes & Pick<Paper, 'now' | 'picked' | 'say'>,
): Paper {
  const seenPx = Math.max(1, given.widthPx - given.headPx);
  const drawnPx = (seenPx * (window.to - window.from)) / (seen.to - seen.from);
  const fromPx = placeIn(window, seen.from) * drawnPx;
  const chained = new Set(chains.flatMap(({ tasks }) => tasks));
  return { ...given, window, drawnPx, seenPx: [fromPx, fromPx + seenPx], chained, batches };
}

/** Of a lane's height. */
export const BAR_SHARE = 0.72;

/** From where the drawn part of the day begins. */
export const acrossPx = ({ window, drawnPx }: Paper, at: Instant): number =>
  placeIn(window, at) * drawnPx;

/** Bars reach a little over the edges, not for hours: some engines draw long strokes badly. */
const clamped = ({ drawnPx }: Paper, px: number): number =>
  Math.min(drawnPx + 20, Math.max(-20, px));

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
