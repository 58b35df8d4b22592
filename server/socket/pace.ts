/**
 * How fast one screen may speak: a steady rate, and bursts beyond it for a hand that taps through a
 * list.
 */
export type Pace = {
  /**
   * Makes room for one message more and says how long it has to wait for its turn, in milliseconds.
   */
  take(nowMs: number): number;
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
  return {
    take(nowMs) {
      const dueMs = Math.max(expectedMs, nowMs);
      expectedMs = dueMs + intervalMs;
      return Math.max(0, dueMs - toleranceMs - nowMs);
    },
  };
}
