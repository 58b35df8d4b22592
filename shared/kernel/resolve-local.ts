import { assert } from './assert.ts';
import type { Instant } from './instant.ts';
import { instant } from './instant.ts';
import { type LocalDay, offsetMs, type WallTime } from './local-time.ts';

const dayMs = 86_400_000;

/** How a wall-clock time met the time-zone table. */
export type LocalReading = 'once' | 'skipped' | 'twice';

/**
 * The instant at which the wall clock of `zone` shows `time` on `day`.
 *
 * On the night the clock goes forward a time that the clock skips is read with the offset from
 * before the change (so it falls as much later as the clock jumps); on the night it goes back the
 * first of the two is taken. Both are said in `reading`, so that the plan can tell the person.
 */
export function resolveLocal(
  day: LocalDay,
  time: WallTime,
  zone: string,
): { at: Instant; reading: LocalReading } {
  const [year, month, date] = day.split('-').map(Number);
  const [hour, minute] = time.split(':').map(Number);
  assert(year && month && date && hour !== undefined && minute !== undefined, `${day} ${time}`);
  const asUtcMs = Date.UTC(year, month - 1, date, hour, minute);
  const candidates = [
    ...new Set([asUtcMs - dayMs, asUtcMs + dayMs].map((ms) => offsetMs(ms, zone))),
  ]
    .map((offset) => ({ offset, at: asUtcMs - offset }))
    .sort((a, b) => a.at - b.at);
  const shown = candidates.filter(({ offset, at }) => offsetMs(at, zone) === offset);
  const first = shown[0];
  if (first) return { at: instant(first.at), reading: shown.length > 1 ? 'twice' : 'once' };
  const before = offsetMs(asUtcMs - dayMs, zone);
  return { at: instant(asUtcMs - before), reading: 'skipped' };
}
