/**
 * How fast one screen may speak: a steady rate, and bursts beyond it for a hand that taps through a
 * list.
 */
export type Pace = {
  /**
   * Makes room for one message more and says how long it has to wait for its turn, in milliseconds.
   */
  take(nowMs: number): number;
  /** As `take`, but what would have to wait is not let in at all, and makes nobody wait longer. */
  tryTake(nowMs: number): number;
};

/**
 * The generic cell rate algorithm (ITU-T I.371), as a shaper: nothing is lost, since what waits may
 * be a tap. Waits never fall from one message to the next, so that their order stays.
 */
export function createPace({
  perSecond,
  burst,
}: {
  readonly perSecond: number;
  readonly burst: number;
}): Pace {
  const intervalMs = 1000 / perSecond;
  const toleranceMs = (burst - 1) * intervalMs;
  let expectedMs = Number.NEGATIVE_INFINITY;
  const waitMs = (nowMs: number) => Math.max(0, Math.max(expectedMs, nowMs) - toleranceMs - nowMs);
  function take(nowMs: number): number {
    const waits = waitMs(nowMs);
    expectedMs = Math.max(expectedMs, nowMs) + intervalMs;
    return waits;
  }
  return { take, tryTake: (nowMs) => waitMs(nowMs) || take(nowMs) };
}
