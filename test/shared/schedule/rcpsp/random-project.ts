import { pickBelow, seeded } from '../../../../shared/kernel/index.ts';
import {
  type Project,
  type ProjectLag,
  projectOf,
} from '../../../../shared/schedule/rcpsp/project.ts';

export type Shape = {
  /** Without source and sink. */
  readonly activities: number;
  readonly kinds: number;
  /** Lags of any sign and most-lags; without, only "after the end". */
  readonly lagged: boolean;
};

/** A project drawn by its seed; with most-lags about every third cannot be scheduled. */
export function randomProject(seed: number, { activities, kinds, lagged }: Shape): Project {
  const random = seeded(seed);
  const between = (least: number, most: number) => least + pickBelow(random, most - least + 1);
  const capacities = Array.from({ length: kinds }, () => between(2, 4));
  const inner = Array.from({ length: activities }, () => ({
    duration: between(lagged ? 0 : 1, 4),
    demands: capacities.map((capacity) => between(0, capacity)),
  }));
  const idle = { duration: 0, demands: [] };
  const all = [idle, ...inner, idle];
  const sink = activities + 1;
  const lags: ProjectLag[] = [];
  for (let to = 1; to <= activities; to++) {
    lags.push([0, to, 0], [to, sink, all[to]?.duration ?? 0]);
    for (let from = 1; from < to; from++) {
      if (random() < 0.65) continue;
      const duration = all[from]?.duration ?? 0;
      const least = lagged ? between(0, duration + 1) : duration;
      lags.push([from, to, least]);
      if (lagged && random() < 0.6) lags.push([to, from, -(least + between(0, 2))]);
    }
  }
  return projectOf(all, capacities, lags);
}
