import type { Activity, Length, Planned, Planner, Problem, Schedule } from '../schedule/index.ts';
import type { BuiltDay } from './built.ts';

/**
 * The schedule of a built day: with the usual time in hand where every promise can be kept so, and else without. Either
 * way it keeps the day's own problem, whose waits need no more than they must.
 */
export function planDay(
  { problem, aims }: Pick<BuiltDay, 'problem' | 'aims'>,
  planner: Planner,
  options: Parameters<Planner>[1],
): Planned {
  const usual = new Map<string, number>(aims.map(({ activity, usualS }) => [activity, usualS]));
  const roomy = { ...problem, activities: problem.activities.map((each) => drawnOut(each, usual)) };
  const planned = planner(roomy, options);
  if (planned.ok && isOnTime(planned.schedule, problem)) return planned;
  return planner(problem, options);
}

function drawnOut(activity: Activity, usual: ReadonlyMap<string, number>): Activity {
  const usualS = usual.get(activity.id);
  if (usualS === undefined || activity.pin) return activity;
  const modes = activity.modes.map((mode) => ({ ...mode, length: atLeast(mode.length, usualS) }));
  return { ...activity, modes };
}

function atLeast(length: Length, usualS: number): Length {
  return length.kind === 'wait' && length.minS < usualS
    ? { ...length, minS: usualS as typeof length.minS }
    : length;
}

function isOnTime({ placements }: Schedule, { goals }: Problem): boolean {
  const placed = new Map(placements.map((placement) => [placement.activity, placement]));
  return goals.every(({ activity, end, dueS }) => {
    const placement = placed.get(activity);
    return placement !== undefined && placement[`${end}S`] <= dueS;
  });
}
