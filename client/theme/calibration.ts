/** A panel as it hangs: its glass from corner to corner in inches, and how far off it is read. */
export type Panel = { readonly diagonalIn: number; readonly distanceM: number };

export type Glass = { readonly widthPx: number; readonly heightPx: number };

/** CSS pixels per minute of arc at the reader's eye, and per millimetre of glass. */
export type Scale = { readonly arcminPx: number; readonly mmPx: number };

/**
 * What is taken for true until somebody measures: a wall of 43 inches read from 3 m, or a phone in
 * the hand.
 */
const WALL: Panel = { diagonalIn: 43, distanceM: 3 };
const PHONE: Panel = { diagonalIn: 6.1, distanceM: 0.4 };
const PHONE_FROM_PX = 600;

/**
 * A gloved finger wants so much glass. On a phone held in the hand that would be a third of its
 * width.
 */
const FINGER_MM = 22;
const FINGER_LEAST_PX = 60;
const FINGER_MOST_SHARE = 1 / 6;

const MM_PER_INCH = 25.4;
const CSS_PX_PER_INCH = 96;
const ARCMIN_RAD = Math.PI / (180 * 60);

/**
 * The scale of everything on a screen. One minute of arc at distance d is 2 d tan(½′) of glass
 * (NUREG-0700 §1.3.1-4 in other words: height = 6.283 · distance · minutes / 21600).
 * @example scaleOf({ diagonalIn: 43, distanceM: 3 }, fullHd).arcminPx //=> about 1.76 px
 */
export function scaleOf(panel: Panel, screen: Glass): Scale {
  const diagonalPx = Math.hypot(screen.widthPx, screen.heightPx);
  const mmPx = diagonalPx / (panel.diagonalIn * MM_PER_INCH);
  const arcminMm = 2 * panel.distanceM * 1000 * Math.tan(ARCMIN_RAD / 2);
  return { mmPx, arcminPx: mmPx * arcminMm };
}

/** The scale of a window on a panel that nobody measured: it follows the window. */
export function assumedScale(window: Glass): Scale {
  return isPhone(window) ? scaleOf(PHONE, window) : scaleOf(WALL, wide(window));
}

/**
 * The scale of a page that is read sitting before it, on a panel that nobody measured: by the
 * reference pixel of CSS, a 96th of an inch seen from 28 inches. A phone is a phone there, too.
 */
export function deskScale(window: Glass): Scale {
  if (isPhone(window)) return assumedScale(window);
  const mmPx = CSS_PX_PER_INCH / MM_PER_INCH;
  const armMm = 28 * MM_PER_INCH;
  return { mmPx, arcminPx: mmPx * 2 * armMm * Math.tan(ARCMIN_RAD / 2) };
}

/**
 * The same glass for a reader who has set their browser to larger letters, `times` the usual ones:
 * what is measured by letters grows, a finger does not.
 */
export const writtenLarger = ({ mmPx, arcminPx }: Scale, times: number): Scale => ({
  mmPx,
  arcminPx: arcminPx * Math.max(1, times),
});

/** Upright, and as wide as what is held in a hand. */
export const isPhone = ({ widthPx, heightPx }: Glass): boolean =>
  Math.min(widthPx, heightPx) < PHONE_FROM_PX && heightPx > widthPx;

/** Taken as 16 to 9 over its longer side, so that a browser's bars do not change the letters. */
function wide({ widthPx, heightPx }: Glass): Glass {
  const longPx = Math.max(widthPx, heightPx);
  return { widthPx: longPx, heightPx: (longPx * 9) / 16 };
}

/** How wide and high a place to tap must be, in CSS pixels, in a window on glass of this scale. */
export function touchPx({ mmPx }: Scale, { widthPx, heightPx }: Glass): number {
  const mostPx = Math.min(widthPx, heightPx) * FINGER_MOST_SHARE;
  return Math.max(FINGER_LEAST_PX, Math.min(FINGER_MM * mmPx, mostPx));
}
