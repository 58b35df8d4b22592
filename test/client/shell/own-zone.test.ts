import { afterEach, describe, expect, it, vi } from 'vitest';
import { ownZone } from '../../../client/shell/own-zone.ts';
import { instant, wallTime } from '../../../shared/kernel/index.ts';

afterEach(() => vi.unstubAllEnvs());

describe('the clock of a screen that no kitchen has told its own', () => {
  // IANA time-zone database, file `etcetera`: "Etc/GMT+8" is eight hours behind UTC.
  it.each([
    ['America/Los_Angeles', '2026-01-15T12:00:00Z', 'Etc/GMT+8', '04:00'],
    ['Europe/Madrid', '2026-01-15T12:00:00Z', 'Etc/GMT-1', '13:00'],
    ['Asia/Kolkata', '2026-01-15T12:00:00Z', 'Asia/Kolkata', '17:30'],
  ])('shows what that of the device does: %s', (device, moment, zone, time) => {
    vi.stubEnv('TZ', device);
    vi.useFakeTimers({ now: Date.parse(moment), toFake: ['Date'] });
    try {
      expect(ownZone().replace('Calcutta', 'Kolkata')).toBe(zone);
      expect(wallTime(instant(Date.parse(moment)), ownZone()).time).toBe(time);
    } finally {
      vi.useRealTimers();
    }
  });
});
