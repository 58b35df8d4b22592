import type { Instant, LocalDay, Seconds, Span } from '../kernel/index.ts';
import {
  addDays,
  after,
  daysBetween,
  hours,
  resolveLocal,
  seconds,
  since,
  wallTime,
} from '../kernel/index.ts';
import type { CrewMember, Kitchen } from '../kitchen/index.ts';
import { workingHours } from '../kitchen/index.ts';
import type { Limits } from './limits.ts';
import type { Frame } from './order.ts';
import type { CookPlan } from './schema.ts';

/** How far the plan looks past its last service: holds end, a late batch still ends. */
const AFTER_CLOSE_S = hours(12);

/**
 * The days that a cook plan reaches over. They begin at midnight of the day before the first
 * service, since the usual day is two days, and are counted in seconds that pass, whatever the
 * clock on the wall does in between.
 */
export function frameOf(
  { day, services }: CookPlan,
  kitchen: Kitchen,
  limits: Limits,
): Omit<Frame, 'homes'> {
  const { zone } = kitchen;
  const origin = resolveLocal(addDays(day, -1), '00:00', zone).at;
  const closes = services.map(({ closes }) => since(origin, resolveLocal(day, closes, zone).at));
  const horizonS = seconds(Math.max(...closes) + AFTER_CLOSE_S);
  const lastDay = wallTime(after(origin, horizonS), zone).day;
  const days = daysFrom(addDays(day, -2), lastDay);
  const hoursOf = (person: CrewMember) =>
    workingHours(person, days, zone).flatMap((span) => within(span, origin, horizonS));
  return {
    kitchen,
    limits,
    origin,
    horizonS,
    hours: new Map(kitchen.crew.map((person) => [person.id, hoursOf(person)])),
  };
}

const daysFrom = (first: LocalDay, last: LocalDay) =>
  Array.from({ length: daysBetween(first, last) + 1 }, (_, n) => addDays(first, n));

function within(
  { start, end }: Span<Instant>,
  origin: Instant,
  horizonS: Seconds,
): Span<Seconds>[] {
  const startS = seconds(Math.max(0, since(origin, start)));
  const endS = seconds(Math.min(horizonS, since(origin, end)));
  return startS < endS ? [{ start: startS, end: endS }] : [];
}
