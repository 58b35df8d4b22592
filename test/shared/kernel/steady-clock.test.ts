import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { instant, recallClock, steadyClock, wallTime } from '../../../shared/kernel/index.ts';

const DAY_MS = 86_400_000;
const zones = ['America/Denver', 'Europe/Madrid', 'Asia/Kolkata', 'Australia/Lord_Howe', 'UTC'];

/** As the platform itself says it. */
function shownBy(zone: string, at: number): string {
  const parts = { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' } as const;
  return new Intl.DateTimeFormat('en-GB', { ...parts, timeZone: zone }).format(at);
}

describe('a clock that was kept', () => {
  it('shows what the time-zone table says, within its days and beyond', () => {
    const moment = fc.date({ min: new Date('2020-01-01'), max: new Date('2030-01-01') });
    const away = fc.integer({ min: -5 * DAY_MS, max: 5 * DAY_MS });
    fc.assert(
      fc.property(fc.constantFrom(...zones), moment, away, (zone, date, awayMs) => {
        fc.pre(Number.isFinite(date.getTime()));
        const clock = steadyClock(zone, instant(date.getTime()));
        if (clock) recallClock(clock);
        const at = instant(date.getTime() + awayMs);
        expect(wallTime(at, zone).time).toBe(shownBy(zone, at));
      }),
    );
  });

  // The clocks of most of the United States go back on the first Sunday of November
  // (15 U.S.C. § 260a): in 2026 on the first.
  it.each([
    ['2026-10-30T12:00:00Z', false],
    ['2026-11-01T04:00:00Z', false],
    ['2026-11-03T12:00:00Z', true],
  ])('is kept around %s: %s', (moment, isKept) => {
    expect(steadyClock('America/Denver', instant(Date.parse(moment))) !== null).toBe(isKept);
  });

  it('is taken at its word', () => {
    const [fromAt, toAt] = [instant(0), instant(DAY_MS)];
    recallClock({ zone: 'Pacific/Apia', fromAt, toAt, aheadMs: 90 * 60_000 });
    expect(wallTime(instant(0), 'Pacific/Apia').time).toBe('01:30');
    expect(wallTime(toAt, 'Pacific/Apia').time).toBe(shownBy('Pacific/Apia', toAt));
  });
});
