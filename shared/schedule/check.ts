import type { ActivityId } from '../kernel/index.ts';
import { seconds } from '../kernel/index.ts';
import { checkResources } from './check-resources.ts';
import type { Activity, Lag, Mode, Placement, Problem, Schedule } from './model.ts';
import type { Violation } from './violation.ts';

/**
 * Everything a schedule does not keep; empty for one that may be published. Written from the model
 * alone, with nothing of the planner's in it, so that the two can only agree by being right.
 * @example check(problem, { placements: [], links: [] }) //=> [{ kind: 'unplaced', activity: 'rub'
 * }]
 */
export function check(problem: Problem, schedule: Schedule): Violation[] {
  const placed = new Map(schedule.placements.map((each) => [each.activity, each]));
  const structural = checkPlacing(problem, schedule);
  if (structural.length > 0) return structural;
  return [
    ...problem.activities.flatMap((activity) => {
      const placement = placed.get(activity.id);
      const mode = activity.modes.find(({ id }) => id === placement?.mode);
      return placement && mode ? checkOne(problem, activity, mode, placement) : [];
    }),
    ...problem.lags.flatMap((lag) => checkLag(lag, placed)),
    ...checkLinks(schedule, placed),
    ...checkGoals(problem, placed),
    ...checkResources(problem, schedule.placements),
  ];
}

type Placed = ReadonlyMap<ActivityId, Placement>;

/** Every activity once, in a mode it has, and nothing else. */
function checkPlacing(problem: Problem, { placements, links }: Schedule): Violation[] {
  const activities = new Map(problem.activities.map((each) => [each.id, each]));
  const resources = new Set(problem.resources.map(({ id }) => id));
  const times = new Map<ActivityId, number>();
  for (const { activity } of placements) times.set(activity, (times.get(activity) ?? 0) + 1);
  const unknown = (what: string): Violation => ({ kind: 'unknown', what });
  return [
    ...problem.activities.flatMap(({ id }): Violation[] => {
      const count = times.get(id) ?? 0;
      if (count === 1) return [];
      return [{ kind: count === 0 ? 'unplaced' : 'placed-twice', activity: id }];
    }),
    ...placements.flatMap(({ activity, mode, uses }) => {
      const modes = activities.get(activity)?.modes;
      if (!modes) return [unknown(activity)];
      const its = modes.find(({ id }) => id === mode);
      if (!its) return [unknown(`${activity} ${mode}`)];
      return uses.flatMap(({ need, resource }) => [
        ...(its.needs[need] ? [] : [unknown(`${activity} need ${need}`)]),
        ...(resources.has(resource) ? [] : [unknown(resource)]),
      ]);
    }),
    ...links.flatMap(({ from, to }) => [from, to].filter((id) => !activities.has(id)).map(unknown)),
  ];
}

/** What one activity asks by itself. */
function checkOne(
  { horizonS }: Problem,
  { id, releaseS, deadlineS, pin }: Activity,
  mode: Mode,
  placement: Placement,
): Violation[] {
  const { startS, endS, uses } = placement;
  const found: Violation[] = [];
  const pinned = pin?.startS !== undefined || pin?.endS !== undefined;
  const earlyByS = pinned ? 0 : Math.max(0, releaseS ?? 0) - startS;
  const lateByS = Math.max(endS - horizonS, endS - (deadlineS ?? horizonS));
  for (const byS of [earlyByS, lateByS]) {
    if (byS > 0) found.push({ kind: 'out-of-time', activity: id, byS: seconds(byS) });
  }
  const lengthS = endS - startS;
  const wholePin = pin?.startS !== undefined && pin.endS !== undefined;
  if (lengthS < 0 || !(wholePin || isLength(mode, lengthS))) {
    found.push({ kind: 'length', activity: id, lengthS: seconds(lengthS) });
  }
  mode.needs.forEach((need, i) => {
    const filling = uses.filter((use) => use.need === i);
    const pinnedUse = pin?.uses?.find((use) => use.need === i);
    const allowed = pinnedUse ? [pinnedUse.resource] : need.oneOf;
    const [only] = filling;
    if (filling.length !== 1 || !only || !allowed.includes(only.resource)) {
      found.push({ kind: 'need', activity: id, role: need.role });
    }
  });
  const asPinned =
    (pin?.mode ?? mode.id) === mode.id &&
    (pin?.startS ?? startS) === startS &&
    (pin?.endS ?? endS) === endS;
  return asPinned ? found : [...found, { kind: 'pin', activity: id }];
}

function isLength({ length }: Mode, lengthS: number): boolean {
  return length.kind === 'work'
    ? lengthS === length.typicalS
    : lengthS >= length.minS && lengthS <= length.maxS;
}

function checkLag(lag: Lag, placed: Placed): Violation[] {
  const time = ({ activity, end }: Lag['from']) => {
    const placement = placed.get(activity);
    return (end === 'start' ? placement?.startS : placement?.endS) ?? Number.NaN;
  };
  const betweenS = time(lag.to) - time(lag.from);
  const byS = Math.max((lag.minS ?? betweenS) - betweenS, betweenS - (lag.maxS ?? betweenS));
  return byS > 0 ? [{ kind: 'lag', lag, byS: seconds(byS) }] : [];
}

function checkLinks({ links }: Schedule, placed: Placed): Violation[] {
  return links.flatMap((link): Violation[] => {
    const [from, to] = [placed.get(link.from), placed.get(link.to)];
    if (!from || !to) return [];
    const freeS = (link.after === 'start' ? from.startS : from.endS) + link.gapS;
    const byS = freeS - to.startS;
    return byS > 0 ? [{ kind: 'link', link, byS: seconds(byS) }] : [];
  });
}

function checkGoals({ goals }: Problem, placed: Placed): Violation[] {
  return goals.flatMap(({ id, activity, end, dueS }): Violation[] => {
    const placement = placed.get(activity);
    if (!placement) return [];
    const byS = (end === 'start' ? placement.startS : placement.endS) - dueS;
    return byS > 0 ? [{ kind: 'goal', goal: id, byS: seconds(byS) }] : [];
  });
}
