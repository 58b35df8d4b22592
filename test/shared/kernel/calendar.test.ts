import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addDays,
  daysBetween,
  isLocalDay,
  weekdayOf,
  weekdays,
} from '../../../shared/kernel/index.ts';

const anyDay = fc.date({
  min: new Date('1900-01-01T00:00:00Z'),
  max: new Date('2400-12-31T00:00:00Z'),
  noInvalidDate: true,
});
const named = (date: Date) => date.toISOString().slice(0, 10);

describe('local days', () => {
  it('follow one another as the platform counts them', () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: -5000, max: 5000 }), (date, days) => {
        const later = new Date(date.getTime() + days * 86_400_000);
        expect(addDays(named(date), days)).toBe(named(later));
        expect(daysBetween(named(date), named(later))).toBe(days);
      }),
    );
  });

  it('fall on the weekday that the platform says', () => {
    fc.assert(
      fc.property(anyDay, (date) => {
        expect(weekdays.indexOf(weekdayOf(named(date)))).toBe((date.getUTCDay() + 6) % 7);
      }),
    );
  });

  it('are told from days that no calendar has', () => {
    expect(isLocalDay('2028-02-29')).toBe(true);
    expect(isLocalDay('2026-02-29')).toBe(false);
    expect(isLocalDay('2026-13-01')).toBe(false);
    expect(isLocalDay('tomorrow')).toBe(false);
  });
});
