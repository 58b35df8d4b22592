import type { Room } from '../../shared/view/index.ts';
import type { SeenWall } from '../shell/seen-size.ts';

/** Heights in minutes of arc. */
const HEAD = 54;
const FOOT = 40;
const ROW = 42;
const LINE = 112;
const LINE_TIGHT = 200;
const LINE_NARROW = 260;
/** What the ring and its word need above the two small places to tap. */
const RING = 80;

const NARROW_BELOW = 600;
const TIGHT_BELOW = 760;
const MOST_LINES = 3;
const MOST_ROWS = 3;

const widthOf = ({ widthPx, arcminPx }: SeenWall) => widthPx / arcminPx;

/**
 * Below this width times stand over the words, not beside them, and the page may be longer than the
 * glass.
 */
export const isNarrow = (wall: SeenWall) => widthOf(wall) < NARROW_BELOW;

/** Below this width the head and the small rows are written small. */
export const isTight = (wall: SeenWall) => widthOf(wall) < TIGHT_BELOW;

const rowPx = ({ arcminPx, touchPx }: SeenWall) => Math.max(ROW * arcminPx, touchPx);
const between = ({ heightPx, arcminPx, touchPx }: SeenWall) =>
  heightPx - HEAD * arcminPx - Math.max(FOOT * arcminPx, touchPx);

function linePx(wall: SeenWall): number {
  const { arcminPx, touchPx } = wall;
  if (isNarrow(wall)) return LINE_NARROW * arcminPx;
  if (isTight(wall)) return LINE_TIGHT * arcminPx;
  return Math.max(LINE * arcminPx, touchPx + RING * arcminPx);
}

/**
 * The wall without what stands over its lines for a while: news, a question, that the hub is gone.
 * With the head all of it is `overPx` high.
 */
export function wallUnder(wall: SeenWall, overPx: number): SeenWall {
  const taken = Math.max(0, overPx - HEAD * wall.arcminPx);
  return { ...wall, heightPx: wall.heightPx - taken };
}

/**
 * How many lines under *Now* a wall can hold in letters that are read from where its reader stands.
 */
export function linesOf(wall: SeenWall): number {
  const lines = Math.floor((between(wall) - rowPx(wall)) / linePx(wall));
  return Math.min(MOST_LINES, Math.max(1, lines));
}

/**
 * What room is left for the rest when so many lines are under *Now*. Where there are none, a
 * sentence says so in the height of one, and rows have the rest.
 */
export function roomOf(wall: SeenWall, lines: number): Room {
  const rows = Math.floor((between(wall) - Math.max(1, lines) * linePx(wall)) / rowPx(wall));
  const most = lines === 0 ? 2 * MOST_ROWS : MOST_ROWS;
  const isLong = isNarrow(wall);
  return {
    now: linesOf(wall),
    next: isLong ? 6 : Math.min(most, Math.max(0, rows)),
    further: isLong ? 0 : Math.max(0, Math.floor((widthOf(wall) - 280) / 300)),
  };
}
