import type { BetweenTaps } from './between-taps.ts';

/** A line of a wall is one to four pixels thick; over so many it is spread evenly. */
const WAY_PX = 6;
const STEP_EVERY_MS = 4 * 60_000;

/**
 * Where the page stands after so many steps, from its place: to and fro at two paces, so that every
 * place in the square is come to, a pixel at a time.
 */
export function driftAfter(steps: number): { readonly leftPx: number; readonly topPx: number } {
  const toAndFro = (n: number) => {
    const turn = n % (2 * WAY_PX);
    return turn <= WAY_PX ? turn : 2 * WAY_PX - turn;
  };
  // Up and to the left alone: what stands out there makes no page longer or wider.
  return { leftPx: -toAndFro(steps), topPx: -toAndFro(Math.floor(steps / (2 * WAY_PX))) };
}

/**
 * Has ruled lines that stand for weeks wander, too slowly to be seen, so that none burns into the
 * glass: makers of displays have theirs do the same (common practice, no source).
 */
export function drift(between: Pick<BetweenTaps, 'isNow'>): void {
  const { style } = document.body;
  let steps = 0;
  setInterval(() => {
    // Nothing moves under a finger.
    if (!between.isNow) return;
    steps += 1;
    const { leftPx, topPx } = driftAfter(steps);
    // Not by a transform: what is fixed to the glass would be fixed to the page instead.
    style.position = 'relative';
    style.left = `${leftPx}px`;
    style.top = `${topPx}px`;
  }, STEP_EVERY_MS);
}
