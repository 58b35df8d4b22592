import { instant, recallClock } from '../../shared/kernel/index.ts';

const HOUR_MIN = 60;
const FROM = instant(Number.NEGATIVE_INFINITY);
const TO = instant(Number.POSITIVE_INFINITY);

/**
 * A zone whose clock shows what this device's does, for a screen that no kitchen has told its own:
 * one of the table's `Etc/GMT` zones, whose names count west as plus. The device's own is asked
 * only where it is off by part of an hour: that takes a browser longer than to draw a wall.
 */
export function ownZone(): string {
  const westMin = new Date().getTimezoneOffset();
  if (westMin % HOUR_MIN !== 0) return Intl.DateTimeFormat().resolvedOptions().timeZone;
  const zone = `Etc/GMT${westMin < 0 ? '-' : '+'}${Math.abs(westMin) / HOUR_MIN}`;
  recallClock({ zone, fromAt: FROM, toAt: TO, aheadMs: -westMin * 60_000 });
  return zone;
}
