import {
  daysBetween,
  type Instant,
  instant,
  type LocalDay,
  must,
  resolveLocal,
  type WallTime,
  wallTime,
} from '../../shared/kernel/index.ts';
import { type PlanFiles, readPlanFiles } from '../../shared/plan/index.ts';
import { catalogue } from './catalogue.ts';
import cookPlan from './cook-plan.json' with { type: 'json' };
import kitchen from './kitchen.json' with { type: 'json' };

/**
 * The moment of the files' own day that is moved to now: lunch is on, dinner's ribs are being
 * trimmed.
 */
const REFERENCE = resolveLocal(cookPlan.day, '12:00', kitchen.zone).at;

const QUARTER_MS = 900_000;

/**
 * The invented kitchen and its day, moved so that it is noon of that day now, in whatever zone:
 * lunch has just opened, dinner opens in five hours, and the shoulders went on in the night.
 * Services keep to quarters of an hour.
 */
export function demoDay(now: Instant, zone: string): PlanFiles {
  const files = readPlanFiles(demoFiles(now, zone));
  return must(files.ok ? files.value : null, 'a sound demo');
}

/** The same as a person would write it into files. */
export function demoFiles(now: Instant, zone: string) {
  const shiftMs = Math.floor(now / QUARTER_MS) * QUARTER_MS - REFERENCE;
  const moved = (day: LocalDay, time: WallTime) =>
    instant(resolveLocal(day, time, kitchen.zone).at + shiftMs);
  const opening = moved(cookPlan.day, must(cookPlan.services[0], 'a service').opens);
  const day = wallTime(opening, zone).day;
  const services = cookPlan.services.map((service) => ({
    ...service,
    opens: wallOn(day, moved(cookPlan.day, service.opens), zone),
    closes: wallOn(day, moved(cookPlan.day, service.closes), zone),
  }));
  const crew = kitchen.crew.map((person) => ({
    ...person,
    shifts: person.shifts.flatMap((shift) =>
      shift.on.map((on) => movedShift({ ...shift, on }, moved, zone)),
    ),
  }));
  return {
    catalogue,
    kitchen: { ...kitchen, zone, crew },
    cookPlan: { ...cookPlan, day, services },
  };
}

type Moved = (day: LocalDay, time: WallTime) => Instant;
type FileShift = (typeof kitchen.crew)[number]['shifts'][number];

function movedShift(
  shift: Omit<FileShift, 'on'> & { readonly on: LocalDay },
  moved: Moved,
  zone: string,
) {
  const start = moved(shift.on, shift.from);
  const { day } = wallTime(start, zone);
  const on = (time: WallTime) => wallOn(day, moved(shift.on, time), zone);
  // A pause that lies within the doubled hour has no wall time of its own.
  const breaks = shift.breaks.map(({ from, to }) => ({ from: on(from), to: on(to) }));
  return {
    on: [day],
    from: on(shift.from),
    to: on(shift.to),
    breaks: breaks.filter(({ from, to }) => from < to),
  };
}

/**
 * The wall time of an instant, counted on from midnight of `day`. In the hour that a clock change
 * doubles, a wall time means the first pass; an instant of the second is put off till the wall can
 * name it.
 */
function wallOn(day: LocalDay, at: Instant, zone: string): WallTime {
  const wall = wallTime(at, zone);
  const hours = Number(wall.time.slice(0, 2)) + 24 * daysBetween(day, wall.day);
  const time = `${String(hours).padStart(2, '0')}${wall.time.slice(2)}`;
  if (resolveLocal(day, time, zone).at === at) return time;
  return wallOn(day, instant(at + QUARTER_MS), zone);
}
