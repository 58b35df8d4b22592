import type { ActivityId } from '../../kernel/index.ts';
import { seconds } from '../../kernel/index.ts';
import type {
  Activity,
  Clash,
  GoalId,
  Lag,
  Length,
  Mode,
  Problem,
  Resource,
  ResourceId,
} from '../model.ts';

/** One thing that a day asks for and might do without. */
export type Demand =
  | { readonly kind: 'goal'; readonly goal: GoalId; readonly activity: ActivityId }
  | { readonly kind: 'deadline' | 'release'; readonly activity: ActivityId }
  /** That a wait is no longer than its longest. */
  | { readonly kind: 'longest'; readonly activity: ActivityId }
  /** The most of a lag. */
  | { readonly kind: 'most'; readonly lag: Lag }
  | { readonly kind: 'need'; readonly activity: ActivityId; readonly role: string }
  /** That resources are in the state which the activity wants. */
  | { readonly kind: 'state'; readonly activity: ActivityId }
  | { readonly kind: 'clash'; readonly clash: Clash }
  | { readonly kind: 'hours'; readonly resource: ResourceId };

/** All that a problem asks for; pins are facts and no demands. */
export function demandsOf(problem: Problem): Demand[] {
  return [
    ...problem.goals.map(({ id, activity }): Demand => ({ kind: 'goal', goal: id, activity })),
    ...problem.activities.flatMap(demandsOfActivity),
    ...problem.lags.flatMap((lag): Demand[] =>
      lag.maxS === undefined ? [] : [{ kind: 'most', lag }],
    ),
    ...problem.clashes.map((clash): Demand => ({ kind: 'clash', clash })),
    ...problem.resources.flatMap((each): Demand[] =>
      each.kind === 'capacity' && each.open ? [{ kind: 'hours', resource: each.id }] : [],
    ),
  ];
}

function demandsOfActivity({ id, modes, releaseS, deadlineS, pin }: Activity): Demand[] {
  if (pin) return [];
  const roles = new Set(modes.flatMap(({ needs }) => needs.map(({ role }) => role)));
  return [
    ...(releaseS === undefined ? [] : [{ kind: 'release', activity: id } as const]),
    ...(deadlineS === undefined ? [] : [{ kind: 'deadline', activity: id } as const]),
    ...(modes.some(({ length }) => length.kind === 'wait')
      ? [{ kind: 'longest', activity: id } as const]
      : []),
    ...[...roles].map((role): Demand => ({ kind: 'need', activity: id, role })),
    ...(modes.some(({ states }) => states.length > 0)
      ? [{ kind: 'state', activity: id } as const]
      : []),
  ];
}

/** The activities that a demand is made of; of hours, none. */
export function activitiesOfDemand(demand: Demand): readonly ActivityId[] {
  switch (demand.kind) {
    case 'most':
      return [demand.lag.from.activity, demand.lag.to.activity];
    case 'clash':
      return [demand.clash.upper.activity, demand.clash.lower.activity];
    case 'hours':
      return [];
    default:
      return [demand.activity];
  }
}

const keyOf = (demand: Demand) =>
  demand.kind === 'most' || demand.kind === 'clash' ? undefined : JSON.stringify(demand);

/** The same problem, asking only for these, of these activities. */
export function askingOnlyFor(
  problem: Problem,
  demands: readonly Demand[],
  isIn: (activity: ActivityId) => boolean,
): Problem {
  const keys = new Set(demands.map(keyOf));
  const asks = (demand: Demand) => keys.has(keyOf(demand));
  const lags = new Set(demands.flatMap((each) => (each.kind === 'most' ? [each.lag] : [])));
  const clashes = new Set(demands.flatMap((each) => (each.kind === 'clash' ? [each.clash] : [])));
  return {
    ...problem,
    activities: problem.activities
      .filter(({ id }) => isIn(id))
      .map((activity) => eased(activity, asks, problem.horizonS)),
    lags: problem.lags.flatMap((lag) => easedLag(lag, lags, isIn)),
    resources: problem.resources.map((each) => easedHours(each, asks)),
    clashes: problem.clashes.filter((each) => clashes.has(each)),
    goals: problem.goals.filter(({ id, activity }) => asks({ kind: 'goal', goal: id, activity })),
  };
}

type Asks = (demand: Demand) => boolean;

function eased(activity: Activity, asks: Asks, horizonS: number): Activity {
  const { id, pin, releaseS, deadlineS } = activity;
  if (pin) return activity;
  const isLongest = asks({ kind: 'longest', activity: id });
  const isState = asks({ kind: 'state', activity: id });
  const modes = activity.modes.map(
    (mode): Mode => ({
      ...mode,
      length: isLongest ? mode.length : unending(mode.length, horizonS),
      needs: mode.needs.filter(({ role }) => asks({ kind: 'need', activity: id, role })),
      states: isState ? mode.states : [],
    }),
  );
  return {
    id,
    modes,
    ...(releaseS !== undefined && asks({ kind: 'release', activity: id }) && { releaseS }),
    ...(deadlineS !== undefined && asks({ kind: 'deadline', activity: id }) && { deadlineS }),
  };
}

function unending(length: Length, horizonS: number): Length {
  if (length.kind === 'work') return length;
  return { ...length, maxS: seconds(Math.max(length.maxS, horizonS)) };
}

function easedLag(lag: Lag, kept: ReadonlySet<Lag>, isIn: (id: ActivityId) => boolean): Lag[] {
  if (!isIn(lag.from.activity) || !isIn(lag.to.activity)) return [];
  if (kept.has(lag)) return [lag];
  const { maxS: _, ...least } = lag;
  return least.minS === undefined ? [] : [least];
}

function easedHours(resource: Resource, asks: Asks): Resource {
  if (resource.kind === 'state' || asks({ kind: 'hours', resource: resource.id })) return resource;
  const { open: _, ...always } = resource;
  return always;
}
