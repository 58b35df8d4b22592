import type { SeenWall } from '../shell/seen-size.ts';

/** Heights in minutes of arc. */
const HEAD = 46;
/** A line of news, which comes and goes and is not to change the page. */
const NEWS = 58;
const LINE = 62;
/** Another row of what is in its pans. */
const PANS = 28;
/** Between two places to tap. */
const GAP_PX = 8;

const NARROW_BELOW = 600;
const MOST_COLUMNS = 2;

/** Below this width the page is one column, and may be longer than the glass. */
export const isNarrow = ({ widthPx, arcminPx }: SeenWall) => widthPx / arcminPx < NARROW_BELOW;

/** In how many columns so many dishes stand, so that all of them are seen at once. */
export function columnsOf(wall: SeenWall, dishes: number): number {
  if (isNarrow(wall)) return 1;
  return Math.min(MOST_COLUMNS, Math.max(1, Math.ceil(dishes / linesOf(wall))));
}

/** How many rows what is in the pans may have, so that all lines are seen at once. */
export function pansRows({ heightPx, arcminPx }: SeenWall, lines: number): 1 | 2 {
  const linePx = (heightPx - (HEAD + NEWS) * arcminPx) / lines;
  return linePx < (LINE + PANS) * arcminPx ? 1 : 2;
}

/** How many lines one under the other a wall holds, with so many lines of news under them. */
export function linesOf({ heightPx, arcminPx, touchPx }: SeenWall, news = 1): number {
  const linePx = Math.max(LINE * arcminPx, touchPx + GAP_PX);
  return Math.max(1, Math.floor((heightPx - (HEAD + news * NEWS) * arcminPx) / linePx));
}

/** What stands beside a name in one column. */
const BESIDE_NAME = 400;
const NAMES_SHARE = 1.2 / 2.2;
/** The same of two columns without their words: edges, gaps, a step; and what one letter takes. */
const BESIDE_SHORT = 117;
const LETTER = 12.6;
/** What a figure takes with its word under it, or without; and a digit more than two. */
const FIGURE = { worded: 63, bare: 54, digit: 27 } as const;
/**
 * What the first box takes, of which the word has no more letters than this, and the step beside
 * it: unless a finger asks for more on a small glass.
 */
const BOX = { wide: 63, letters: 5, step: 51 } as const;
/** A longer word is wider than the figure over it: there it is left to who hears the line. */
const MOST_READY = 6;

export const hasReady = ({ ready }: Words) => ready.length <= MOST_READY;

type Words = { readonly ready: string; readonly undo: string };

/** How wide a name may be with what is in it beside such a figure, in minutes of arc. */
export function nameWidth(wall: SeenWall, columns: number, ready: number, words: Words): number {
  const wide = wall.widthPx / wall.arcminPx;
  if (isNarrow(wall)) return Number.POSITIVE_INFINITY;
  if (columns === 1) return (wide - BESIDE_NAME) * NAMES_SHARE;
  const digits = Math.max(0, `${ready}`.length - 2);
  const figure = Math.max(hasReady(words) ? FIGURE.worded : 0, FIGURE.bare + digits * FIGURE.digit);
  const { length } = words.undo;
  const touch = wall.touchPx / wall.arcminPx;
  const box = Math.max(touch, length > BOX.letters ? LETTER * (length + 1) : BOX.wide);
  const step = Math.max(0, touch - BOX.step);
  return wide / columns - BESIDE_SHORT - figure - box - step;
}
