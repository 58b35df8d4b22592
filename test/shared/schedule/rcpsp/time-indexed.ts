import type { Project } from '../../../../shared/schedule/rcpsp/project.ts';

/**
 * A project as a linear program in whole numbers: one variable for each activity and start
 * (A. A. B. Pritsker, L. J. Watters and P. M. Wolfe, Management Science 16, 1969), lags
 * disaggregated (N. Christofides, R. Alvarez-Valdes and J. M. Tamarit, EJOR 29, 1987). In the LP
 * format of CPLEX, with all starts up to the horizon.
 */
export function timeIndexed(project: Project, horizon: number): string {
  const { durations, capacities, demands, lags } = project;
  const times = Array.from({ length: horizon + 1 }, (_, time) => time);
  const x = (activity: number, time: number) => `x${activity}_${time}`;
  const sumOf = (terms: readonly string[]) => (terms.length === 0 ? '0 x0_0' : terms.join(' + '));
  const sink = durations.length - 1;
  const rows: string[] = ['x0_0 = 1'];
  for (const activity of durations.keys()) {
    rows.push(`${sumOf(times.map((time) => x(activity, time)))} = 1`);
  }
  lags.from.forEach((from, lag) => {
    const to = lags.to[lag] ?? 0;
    const least = lags.least[lag] ?? 0;
    for (const time of times) {
      const late = times.filter((u) => u >= time).map((u) => x(from, u));
      const soon = times.filter((u) => u < time + least).map((u) => x(to, u));
      if (late.length > 0 && soon.length > 0) rows.push(`${sumOf([...late, ...soon])} <= 1`);
    }
  });
  capacities.forEach((capacity, kind) => {
    for (const time of times) {
      const terms = Array.from(durations, (duration, i) => {
        const demand = demands[i * capacities.length + kind] ?? 0;
        return times
          .filter((u) => demand > 0 && u <= time && time < u + duration)
          .map((u) => `${demand} ${x(i, u)}`);
      }).flat();
      if (terms.length > 0) rows.push(`${sumOf(terms)} <= ${capacity}`);
    }
  });
  const names = Array.from(durations.keys()).flatMap((i) => times.map((time) => x(i, time)));
  const goal = times.map((time) => `${time} ${x(sink, time)}`);
  return [
    'Minimize',
    ` makespan: ${sumOf(goal)}`,
    'Subject To',
    ...rows.map((row, i) => ` r${i}: ${row}`),
    'Binary',
    ` ${names.join(' ')}`,
    'End',
  ].join('\n');
}
