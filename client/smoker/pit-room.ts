import type { SeenWall } from '../shell/seen-size.ts';

const NARROW_BELOW = 600;
const TWO_FROM = 900;

/**
 * Below this width the smokers stand one under the other, and the page may be longer than the
 * glass.
 */
export const isNarrow = ({ widthPx, arcminPx }: SeenWall) => widthPx / arcminPx < NARROW_BELOW;

/** Heights in minutes of arc: of the head, over the racks of a smoker, and under them. */
const HEAD = 54;
const TITLE = 64;
const HOURS = 28;
const FOOT = 120;
const THEN = 34;
/** A rack in which its pieces can be told. */
const RACK = 50;
/** Between two places to tap. */
const GAP_PX = 8;

/**
 * Whether so many racks can each be told and tapped with the list of what comes then under them;
 * where they cannot, the racks have its room.
 */
export function hasThen({ heightPx, arcminPx, touchPx }: SeenWall, racks: number): boolean {
  const footPx = Math.max(FOOT * arcminPx, 2 * touchPx + 3 * GAP_PX);
  const thenPx = Math.max(THEN * arcminPx, touchPx);
  const overPx = (HEAD + TITLE + HOURS) * arcminPx;
  return heightPx - overPx - footPx - thenPx >= racks * Math.max(RACK * arcminPx, touchPx);
}

/** How many lines of work fit beside one another at the foot. */
export const pitLines = ({ widthPx, arcminPx }: SeenWall) =>
  widthPx / arcminPx < TWO_FROM ? 1 : 2;
