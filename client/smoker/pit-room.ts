import type { SeenWall } from '../shell/seen-size.ts';

const NARROW_BELOW = 600;
const TWO_FROM = 900;

/**
 * Below this width the smokers stand one under the other, and the page may be longer than the
 * glass.
 */
export const isNarrow = ({ widthPx, arcminPx }: SeenWall) => widthPx / arcminPx < NARROW_BELOW;

/** How many lines of work fit beside one another at the foot. */
export const pitLines = ({ widthPx, arcminPx }: SeenWall) =>
  widthPx / arcminPx < TWO_FROM ? 1 : 2;
