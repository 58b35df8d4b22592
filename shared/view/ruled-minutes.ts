import type { Instant } from '../kernel/index.ts';

/** A task's time as a ruled line: shares of its length, 0 at its start and 1 at its end. */
export type RuledMinutes = {
  readonly goneShare: number;
  /** One tick for each step of the time that is still ahead. */
  readonly tickShares: readonly number[];
};

const STEPS_MIN = [1, 2, 5, 10, 15, 30, 60, 120];
/** Ticks closer than this on a wall run into one another. */
const MOST_TICKS = 40;

/**
 * The ruled minutes of a task at `now`; one that runs over ends now.
 * @example ruledMinutes(noon, tenPast, fivePast) //=> { goneShare: 0.5, tickShares: [0.6, 0.7, 0.8,
 * 0.9] }
 */
export function ruledMinutes(startAt: Instant, endAt: Instant, now: Instant): RuledMinutes {
  const end = Math.max(endAt, now, startAt + 60_000);
  const lengthMs = end - startAt;
  const goneShare = Math.min(1, Math.max(0, (now - startAt) / lengthMs));
  const lengthMin = lengthMs / 60_000;
  const stepMin = STEPS_MIN.find((step) => lengthMin / step <= MOST_TICKS) ?? lengthMin / 4;
  const count = Math.ceil(lengthMin / stepMin) - 1;
  const shares = Array.from({ length: count }, (_, i) => ((i + 1) * stepMin) / lengthMin);
  return { goneShare, tickShares: shares.filter((share) => share > goneShare) };
}
