import { assert } from './assert.ts';
import type { LocalDay } from './local-time.ts';

export type Weekday = (typeof weekdays)[number];
export const weekdays = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;

/**
 * The local day so many days later, or earlier where `days` is negative.
 * @example addDays('2026-02-28', 1) //=> '2026-03-01'
 */
export function addDays(day: LocalDay, days: number): LocalDay {
  return dayOf(numberOf(day) + days);
}

/**
 * Whole days from one local day to another.
 * @example daysBetween('2026-11-25', '2026-11-27') //=> 2
 */
export function daysBetween(from: LocalDay, to: LocalDay): number {
  return numberOf(to) - numberOf(from);
}

/** @example weekdayOf('2026-11-25') //=> 'wed' */
export function weekdayOf(day: LocalDay): Weekday {
  // Day 0, 1970-01-01, was a Thursday.
  const weekday = weekdays[(((numberOf(day) + 3) % 7) + 7) % 7];
  assert(weekday, day);
  return weekday;
}

/** Whether it is a day of the calendar. @example isLocalDay('2026-02-29') //=> false */
export function isLocalDay(day: string): boolean {
  return /^\d{4}-\d{2}-\d{2}$/.test(day) && dayOf(numberOf(day)) === day;
}

// Days since 1970-01-01 in the Gregorian calendar, by years that begin in March so that the leap
// day comes last. After H. Hinnant, "chrono-Compatible Low-Level Date Algorithms" (2021),
// days_from_civil and civil_from_days.
function numberOf(day: LocalDay): number {
  const [year = 0, month = 0, date = 0] = day.split('-').map(Number);
  const marchYear = month <= 2 ? year - 1 : year;
  const era = Math.floor(marchYear / 400);
  const yearOfEra = marchYear - era * 400;
  const dayOfYear = Math.floor((153 * ((month + 9) % 12) + 2) / 5) + date - 1;
  const dayOfEra =
    yearOfEra * 365 + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100) + dayOfYear;
  return era * 146_097 + dayOfEra - 719_468;
}

function dayOf(number: number): LocalDay {
  const shifted = number + 719_468;
  const era = Math.floor(shifted / 146_097);
  const dayOfEra = shifted - era * 146_097;
  const yearOfEra = Math.floor(
    (dayOfEra -
      Math.floor(dayOfEra / 1460) +
      Math.floor(dayOfEra / 36_524) -
      Math.floor(dayOfEra / 146_096)) /
      365,
  );
  const dayOfYear =
    dayOfEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const marchMonth = Math.floor((5 * dayOfYear + 2) / 153);
  const date = dayOfYear - Math.floor((153 * marchMonth + 2) / 5) + 1;
  const month = marchMonth < 10 ? marchMonth + 3 : marchMonth - 9;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  return [String(year).padStart(4, '0'), two(month), two(date)].join('-');
}

const two = (n: number) => String(n).padStart(2, '0');
