import { describe, expect, it } from 'vitest';
import {
  addDays,
  instant,
  type LocalReading,
  resolveLocal,
  wallTime,
} from '../../shared/kernel/index.ts';

/**
 * IANA Time Zone Database, read as compiled in release 2025c with zdump. The rules behind it: US
 * Energy Policy Act of 2005, second Sunday of March to first Sunday of November at 2:00 local; UK
 * Summer Time Order 2002, last Sunday of March to last Sunday of October at 1:00 UTC.
 */
const transitions = [
  { zone: 'America/Chicago', utc: '2026-03-08T08:00:00Z', before: '01:59', after: '03:00' },
  { zone: 'America/Chicago', utc: '2026-11-01T07:00:00Z', before: '01:59', after: '01:00' },
  { zone: 'Europe/London', utc: '2026-03-29T01:00:00Z', before: '00:59', after: '02:00' },
  { zone: 'Europe/London', utc: '2026-10-25T01:00:00Z', before: '01:59', after: '01:00' },
] as const;

describe('the wall clock at a clock change', () => {
  it.each(transitions)('jumps in $zone at $utc from $before to $after', (change) => {
    const at = Date.parse(change.utc);
    expect(wallTime(instant(at - 60_000), change.zone).time).toBe(change.before);
    expect(wallTime(instant(at), change.zone).time).toBe(change.after);
  });
});

describe('a service time on the day of a clock change', () => {
  it.each<[string, string, string, string, LocalReading]>([
    // Forward: 2:00 to 3:00 does not exist; it is read with the offset from before the change.
    ['America/Chicago', '2026-03-08', '01:30', '2026-03-08T07:30:00Z', 'once'],
    ['America/Chicago', '2026-03-08', '02:30', '2026-03-08T08:30:00Z', 'skipped'],
    ['America/Chicago', '2026-03-08', '03:30', '2026-03-08T08:30:00Z', 'once'],
    ['America/Chicago', '2026-03-08', '11:30', '2026-03-08T16:30:00Z', 'once'],
    // Back: 1:00 to 2:00 comes twice; the first pass is meant.
    ['America/Chicago', '2026-11-01', '00:30', '2026-11-01T05:30:00Z', 'once'],
    ['America/Chicago', '2026-11-01', '01:30', '2026-11-01T06:30:00Z', 'twice'],
    ['America/Chicago', '2026-11-01', '02:00', '2026-11-01T08:00:00Z', 'once'],
    ['America/Chicago', '2026-11-01', '11:30', '2026-11-01T17:30:00Z', 'once'],
    ['Europe/London', '2026-03-29', '01:30', '2026-03-29T01:30:00Z', 'skipped'],
    ['Europe/London', '2026-03-29', '17:00', '2026-03-29T16:00:00Z', 'once'],
    ['Europe/London', '2026-10-25', '01:30', '2026-10-25T00:30:00Z', 'twice'],
    ['Europe/London', '2026-10-25', '17:00', '2026-10-25T17:00:00Z', 'once'],
    // The night before counts on past midnight: 26:30 is half past two.
    ['America/Chicago', '2026-03-07', '26:30', '2026-03-08T08:30:00Z', 'skipped'],
    ['Europe/London', '2026-10-24', '25:30', '2026-10-25T00:30:00Z', 'twice'],
  ])('%s, %s %s is %s (%s)', (zone, day, time, utc, reading) => {
    expect(resolveLocal(day, time, zone)).toEqual({ at: Date.parse(utc), reading });
  });
});

describe.each(['America/Chicago', 'Europe/London'])(
  'every quarter of an hour of 2026 in %s',
  (zone) => {
    // The platform's own reading of the database, by another door than the one used inside.
    const platform = new Intl.DateTimeFormat('en-CA', {
      ...{ timeZone: zone, hourCycle: 'h23', year: 'numeric', month: '2-digit', day: '2-digit' },
      ...{ hour: '2-digit', minute: '2-digit' },
    });
    const shownAt = (ms: number) => platform.format(ms).replace(', ', ' ');
    const times = Array.from({ length: 96 }, (_, n) => {
      const two = (value: number) => String(value).padStart(2, '0');
      return `${two(Math.floor(n / 4))}:${two((n % 4) * 15)}`;
    });

    it('is when the platform shows it, and only skipped and doubled hours are marked', () => {
      const marked: string[] = [];
      for (let day = '2026-01-01'; day < '2027-01-01'; day = addDays(day, 1)) {
        for (const time of times) {
          const { at, reading } = resolveLocal(day, time, zone);
          if (reading !== 'once') marked.push(`${day} ${time.slice(0, 2)} ${reading}`);
          const isShown = shownAt(at) === `${day} ${time}`;
          if (isShown === (reading === 'skipped')) expect.fail(`${day} ${time}: ${shownAt(at)}`);
        }
      }
      const nights = {
        'America/Chicago': ['2026-03-08 02 skipped', '2026-11-01 01 twice'],
        'Europe/London': ['2026-03-29 01 skipped', '2026-10-25 01 twice'],
      };
      expect([...new Set(marked)]).toEqual(nights[zone as keyof typeof nights]);
      expect(marked).toHaveLength(8);
    });
  },
);
