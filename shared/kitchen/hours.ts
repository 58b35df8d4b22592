import type { Instant, LocalDay, Span } from '../kernel/index.ts';
import { resolveLocal, weekdayOf } from '../kernel/index.ts';
import type { CrewMember, Shift } from './schema.ts';

/**
 * When a person works on these local days, breaks left out: sorted, disjoint spans of instants.
 * Shifts that begin on a day are counted to it, however late they end; wall times are resolved one
 * by one, so a night with a clock change has the hours it has.
 */
export function workingHours(
  person: CrewMember,
  days: readonly LocalDay[],
  zone: string,
): Span<Instant>[] {
  const spans = days.flatMap((day) =>
    person.shifts
      .filter(({ on }) => on.includes(day) || on.includes(weekdayOf(day)))
      .flatMap((shift) => hoursOf(shift, day, zone)),
  );
  return joined(spans.filter(({ start, end }) => start < end));
}

function hoursOf({ from, to, breaks }: Shift, day: LocalDay, zone: string): Span<Instant>[] {
  const at = (time: string) => resolveLocal(day, time, zone).at;
  const pauses = [...breaks].sort((a, b) => (a.from < b.from ? -1 : 1));
  const starts = [from, ...pauses.map((pause) => pause.to)].map(at);
  const ends = [...pauses.map((pause) => pause.from), to].map(at);
  return starts.flatMap((start, index) => {
    const end = ends[index];
    return end === undefined ? [] : [{ start, end }];
  });
}

/** Two shifts that touch or overlap are one. */
function joined(spans: readonly Span<Instant>[]): Span<Instant>[] {
  const done: Span<Instant>[] = [];
  for (const span of [...spans].sort((a, b) => a.start - b.start)) {
    const last = done.at(-1);
    if (last === undefined || last.end < span.start) {
      done.push(span);
    } else if (last.end < span.end) {
      done[done.length - 1] = { start: last.start, end: span.end };
    }
  }
  return done;
}
