import { must } from '../../kernel/index.ts';

/**
 * A project under scarce resources in the form the field measures itself on: whole periods, one
 * mode an activity, lags from start to start (RCPSP, and RCPSP/max where a lag may be negative).
 * Activity 0 is the source and begins at 0; the last is the sink, whose start is the makespan.
 */
export type Project = {
  /** By activity. */
  readonly durations: Int32Array;
  /** By resource. */
  readonly capacities: Int32Array;
  /** What an activity takes of a resource while it lasts: `activity * resources + resource`. */
  readonly demands: Int32Array;
  readonly lags: StartLags;
};

/**
 * `to` starts at least `least` periods after `from` does. A most-lag "at most m after" is the lag
 * back by `-m`.
 */
export type StartLags = {
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly least: Int32Array;
};

/** One activity as it is read: how long, with how much of each resource. */
export type ProjectActivity = { readonly duration: number; readonly demands: readonly number[] };

/** One lag as it is read: from, to, at least. */
export type ProjectLag = readonly [from: number, to: number, least: number];

/** A project from its parts; an activity or a lag that names what is not there is a bug. */
export function projectOf(
  activities: readonly ProjectActivity[],
  capacities: readonly number[],
  lags: readonly ProjectLag[],
): Project {
  for (const [from, to] of lags) {
    must(activities[from], 'the activity a lag comes from');
    must(activities[to], 'the activity a lag goes to');
  }
  return {
    durations: Int32Array.from(activities, ({ duration }) => duration),
    capacities: Int32Array.from(capacities),
    demands: Int32Array.from(
      activities.flatMap(({ demands }) => capacities.map((_, kind) => demands[kind] ?? 0)),
    ),
    lags: {
      from: Int32Array.from(lags, ([from]) => from),
      to: Int32Array.from(lags, ([, to]) => to),
      least: Int32Array.from(lags, ([, , least]) => least),
    },
  };
}
