import type { Seconds, TaskId } from '../kernel/index.ts';
import { minutes, seconds } from '../kernel/index.ts';
import type {
  Activity,
  Lag,
  Length,
  Planned,
  Planner,
  Problem,
  Resource,
  Schedule,
} from '../schedule/index.ts';
import type { Aim, BuiltDay } from './built.ts';
import { kitchenResource } from './resources.ts';

/**
 * Work planned up to the last second before a break comes after the break when it slips by a
 * second; so much of each span of a hand's time is left free at its end where the day allows (our
 * choice).
 */
const BEFORE_A_BREAK_S = minutes(10);

/**
 * The schedule of a built day: with the usual time in hand where every promise can be kept so, and
 * else without. Either way it keeps the day's own problem, whose waits need no more than they must
 * and whose hands work to the end.
 */
export function planDay(
  day: Pick<BuiltDay, 'problem' | 'aims'>,
  planner: Planner,
  options: Parameters<Planner>[1],
): Planned {
  const planned = planner(withTimeInHand(day), options);
  if (planned.ok && isOnTime(planned.schedule, day.problem)) return planned;
  return planner(day.problem, options);
}

function withTimeInHand({ problem, aims }: Pick<BuiltDay, 'problem' | 'aims'>): Problem {
  const of = (kind: Aim['kind']) =>
    new Map(aims.filter((aim) => aim.kind === kind).map((aim) => [aim.activity, aim.leastS]));
  const lasts = of('lasts');
  const ahead = of('ready-ahead');
  return {
    ...problem,
    activities: problem.activities.map((activity) => drawnOut(activity, lasts)),
    lags: problem.lags.map((lag) => spaced(lag, ahead)),
    resources: problem.resources.map(restedEarly),
  };
}

type Leasts = ReadonlyMap<TaskId, Seconds>;

function drawnOut(activity: Activity, lasts: Leasts): Activity {
  const leastS = lasts.get(activity.id);
  if (leastS === undefined || activity.pin) return activity;
  const modes = activity.modes.map((mode) => ({ ...mode, length: atLeast(mode.length, leastS) }));
  return { ...activity, modes };
}

function atLeast(length: Length, leastS: Seconds): Length {
  if (length.kind !== 'wait' || length.minS >= leastS) return length;
  return { ...length, minS: leastS };
}

function spaced(lag: Lag, ahead: Leasts): Lag {
  const leastS = ahead.get(lag.to.activity);
  if (leastS === undefined || lag.to.end !== 'start' || lag.minS === undefined) return lag;
  return { ...lag, minS: leastS };
}

function restedEarly(resource: Resource): Resource {
  if (resource.kind !== 'capacity' || !resource.open) return resource;
  if (kitchenResource(resource.id).kind !== 'hand') return resource;
  const open = resource.open
    .map(({ start, end }) => ({ start, end: seconds(end - BEFORE_A_BREAK_S) }))
    .filter(({ start, end }) => start < end);
  return { ...resource, open };
}

function isOnTime({ placements }: Schedule, { goals }: Problem): boolean {
  const placed = new Map(placements.map((placement) => [placement.activity, placement]));
  return goals.every(({ activity, end, dueS }) => {
    const placement = placed.get(activity);
    return placement !== undefined && placement[`${end}S`] <= dueS;
  });
}
