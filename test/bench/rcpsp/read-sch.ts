import { type Project, projectOf } from '../../../shared/schedule/rcpsp/index.ts';

/**
 * A project in the `.sch` format of ProGen/max (C. Schwindt 1996; R. Kolisch, C. Schwindt and
 * A. Sprecher 1999): activities counted from 0, one mode each, lags from start to start.
 */
export function readSch(text: string): Project {
  const rows = text
    .split(/\r?\n/)
    .filter((line) => /\d/.test(line))
    .map((line) => [...line.matchAll(/-?\d+/g)].map(([digits]) => Number(digits)));
  const count = (rows[0]?.[0] ?? 0) + 2;
  const lags = rows
    .slice(1, 1 + count)
    .flatMap(([from = 0, , successors = 0, ...rest]) =>
      rest.slice(0, successors).map((to, i) => [from, to, rest[successors + i] ?? 0] as const),
    );
  const activities = rows
    .slice(1 + count, 1 + 2 * count)
    .map(([, , duration = 0, ...demands]) => ({ duration, demands }));
  return projectOf(activities, rows[1 + 2 * count] ?? [], lags);
}
