import type { Project } from '../../../../shared/schedule/rcpsp/project.ts';

/** What is wrong with a schedule, told in words; written apart from what is checked. */
export function faultsOf(project: Project, starts: ArrayLike<number>): string[] {
  const { durations, capacities, demands, lags } = project;
  const startOf = (activity: number) => starts[activity] ?? Number.NaN;
  const faults: string[] = [];
  if (startOf(0) !== 0) faults.push('the source does not start at 0');
  lags.from.forEach((from, lag) => {
    const to = lags.to[lag] ?? 0;
    const least = lags.least[lag] ?? 0;
    if (!(startOf(to) >= startOf(from) + least)) faults.push(`${to} is too soon after ${from}`);
  });
  const end = Math.max(...Array.from(durations, (duration, i) => startOf(i) + duration));
  if (end !== startOf(durations.length - 1)) faults.push('the sink is not where the last ends');
  capacities.forEach((capacity, kind) => {
    for (let time = 0; time < end; time++) {
      const used = Array.from(durations.keys())
        .filter((i) => startOf(i) <= time && time < startOf(i) + (durations[i] ?? 0))
        .reduce((sum, i) => sum + (demands[i * capacities.length + kind] ?? 0), 0);
      if (used > capacity) faults.push(`resource ${kind} is short at ${time}`);
    }
  });
  return faults;
}
