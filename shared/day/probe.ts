import type { Instant, TaskId } from '../kernel/index.ts';
import type { DayState, Reading } from './state.ts';

/**
 * A hand that pricks anew finds another place: so much, up or down, is no leap. Over time a core of
 * a piece that is cooked whole comes up no faster than the thinnest rib, and over a dead fire falls
 * no faster than it cools (all three judged).
 */
const SLACK_K = 12;
const RISING_K_PER_MIN = 1.5;
const FALLING_K_PER_MIN = 0.1;

/**
 * The readings of a core that are its own, from when it went in on. A probe that fell out shows the
 * air, or the room: from one reading to the next it leaps as no meat can. It is believed again once
 * it shows what the core may have come to since.
 */
export function saneCores(state: DayState, stay: TaskId, from: Instant): Reading[] {
  const sane: Reading[] = [];
  for (const reading of coresOf(state, stay)) {
    const last = sane.at(-1);
    if (reading.at < from || (last && isLeap(last, reading))) continue;
    sane.push(reading);
  }
  return sane;
}

/** All readings of a core in order of time, as they were kept. */
export function coresOf({ readings }: DayState, stay: TaskId): Reading[] {
  return readings
    .filter(({ where }) => where.kind === 'core' && where.stay === stay)
    .sort((a, b) => a.at - b.at);
}

/** Whether one reading cannot be the same core's as the one before it. */
export function isLeap(
  before: Pick<Reading, 'at' | 'tempC'>,
  { at, tempC }: typeof before,
): boolean {
  const passedMin = (at - before.at) / 60_000;
  const changedK = tempC - before.tempC;
  const fastest = changedK > 0 ? RISING_K_PER_MIN : FALLING_K_PER_MIN;
  return Math.abs(changedK) > SLACK_K + fastest * passedMin;
}
