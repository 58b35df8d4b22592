import { type Project, projectOf } from '../../../shared/schedule/rcpsp/index.ts';

const numbersOf = (line: string) => [...line.matchAll(/-?\d+/g)].map(([digits]) => Number(digits));

/**
 * A project in the `.sm` format of PSPLIB (R. Kolisch and A. Sprecher, EJOR 96, 1996): jobs counted
 * from 1, the first and the last without length, one mode each.
 */
export function readSm(text: string): Project {
  const rows = (title: string): number[][] => {
    const lines = text.split(/\r?\n/);
    const from = lines.findIndex((line) => line.startsWith(title));
    if (from === -1) throw new Error(`no section ${title}`);
    const section = lines.slice(from + 1);
    const end = section.findIndex((line) => line.startsWith('***'));
    return section
      .slice(0, end === -1 ? undefined : end)
      .filter((line) => /^[\s\d-]*\d[\s\d-]*$/.test(line))
      .map(numbersOf);
  };
  const requests = rows('REQUESTS/DURATIONS');
  const activities = requests.map(([, mode, duration = 0, ...demands]) => {
    if (mode !== 1) throw new Error('only one mode an activity can be read');
    return { duration, demands };
  });
  const lags = rows('PRECEDENCE RELATIONS').flatMap(([job = 0, , , ...successors]) =>
    successors.map((next) => [job - 1, next - 1, activities[job - 1]?.duration ?? 0] as const),
  );
  return projectOf(activities, rows('RESOURCEAVAILABILITIES')[0] ?? [], lags);
}
