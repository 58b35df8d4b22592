import type { SeenWall } from '../shell/seen-size.ts';

/** Heights in minutes of arc. */
const HEAD = 46;
/** A line of news, which comes and goes and is not to change the page. */
const NEWS = 58;
const LINE = 62;
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

/** How many lines one under the other a wall holds, with news over them. */
export function linesOf({ heightPx, arcminPx, touchPx }: SeenWall): number {
  const linePx = Math.max(LINE * arcminPx, touchPx + GAP_PX);
  return Math.max(1, Math.floor((heightPx - (HEAD + NEWS) * arcminPx) / linePx));
}

/** What stands beside a name, in one column and in two. */
const BESIDE_NAME = { one: 400, two: 243 } as const;
const NAMES_SHARE = 1.2 / 2.2;

/** How wide a name may be with what is in it, in minutes of arc. */
export function nameWidth(wall: SeenWall, columns: number): number {
  const wide = wall.widthPx / wall.arcminPx;
  if (isNarrow(wall)) return Number.POSITIVE_INFINITY;
  return columns > 1 ? wide / columns - BESIDE_NAME.two : (wide - BESIDE_NAME.one) * NAMES_SHARE;
}
