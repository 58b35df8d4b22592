import type { ActivityId } from '../kernel/index.ts';
import { must, overlaps, seconds } from '../kernel/index.ts';
import type {
  Activity,
  CapacityResource,
  Clash,
  Mode,
  Part,
  Placement,
  Problem,
  StateResource,
} from './model.ts';
import type { Violation } from './violation.ts';

type Placed = {
  readonly activity: Activity;
  readonly mode: Mode;
  readonly placement: Placement;
};

/** What placements ask of resources together: capacity, calendars, states and clashes. */
export function checkResources(problem: Problem, placements: readonly Placement[]): Violation[] {
  const activities = new Map(problem.activities.map((each) => [each.id, each]));
  const placed = placements.map((placement): Placed => {
    const activity = must(activities.get(placement.activity), placement.activity);
    const mode = activity.modes.find(({ id }) => id === placement.mode);
    return { activity, mode: must(mode, placement.mode), placement };
  });
  const byId = new Map(placed.map((each) => [each.activity.id, each]));
  return [
    ...problem.resources.flatMap((resource) =>
      resource.kind === 'state'
        ? checkStates(resource, placed)
        : [...checkCapacity(resource, placed), ...checkOpen(resource, placed)],
    ),
    ...problem.clashes.flatMap((clash) => checkClash(clash, byId)),
  ];
}

/** Counts what is used at every moment at which a use begins. */
function checkCapacity(resource: CapacityResource, placed: readonly Placed[]): Violation[] {
  const users = placed.flatMap(({ activity, mode, placement }) => {
    const { startS, endS } = placement;
    const mine = placement.uses.filter((use) => use.resource === resource.id);
    const amount = mine.reduce((sum, { need }) => sum + (mode.needs[need]?.amount ?? 0), 0);
    return amount > 0 ? [{ id: activity.id, start: startS, end: endS, amount }] : [];
  });
  return [...new Set(users.map(({ start }) => start))].flatMap((atS): Violation[] => {
    const there = users.filter(({ start, end }) => start <= atS && atS < end);
    const used = there.reduce((sum, { amount }) => sum + amount, 0);
    if (used <= resource.capacity) return [];
    const activities = there.map(({ id }) => id);
    return [
      {
        kind: 'capacity',
        resource: resource.id,
        atS,
        used,
        capacity: resource.capacity,
        activities,
      },
    ];
  });
}

function checkOpen({ id, open }: CapacityResource, placed: readonly Placed[]): Violation[] {
  if (!open) return [];
  return placed.flatMap(({ activity, placement }): Violation[] => {
    if (isPinned(activity) || !placement.uses.some(({ resource }) => resource === id)) return [];
    const { startS, endS } = placement;
    const fits = open.some(({ start, end }) => start <= startS && endS <= end);
    return fits ? [] : [{ kind: 'closed', activity: activity.id, resource: id }];
  });
}

const isPinned = ({ pin }: Activity) => pin?.startS !== undefined || pin?.endS !== undefined;

/** Goes through the needs in the order of their starts, and measures every change of state. */
function checkStates(resource: StateResource, placed: readonly Placed[]): Violation[] {
  const needs = placed
    .flatMap(({ activity, mode, placement: { startS, endS } }) =>
      mode.states
        .filter((state) => state.resource === resource.id)
        .map(({ state }) => ({ id: activity.id, state, startS, endS, pinned: isPinned(activity) })),
    )
    .sort((a, b) => a.startS - b.startS || a.endS - b.endS);
  const takesS = (from: string, to: string) => {
    const listed = resource.changes.find((each) => each.from === from && each.to === to);
    return from === to ? 0 : (listed?.takesS ?? resource.defaultChangeS);
  };
  const found: Violation[] = [];
  let state = resource.initial;
  let freeS = 0;
  let before: ActivityId | null = null;
  // The last of the earlier state to end, and of the state that now is.
  let last: { id: ActivityId; endS: number } | null = null;
  for (const need of needs) {
    if (need.state !== state) {
      freeS = last?.endS ?? 0;
      before = last?.id ?? null;
      freeS += state === undefined ? 0 : takesS(state, need.state);
      state = need.state;
      last = null;
    }
    const byS = freeS - need.startS;
    const judged = before !== null || (resource.initial !== undefined && !need.pinned);
    if (byS > 0 && judged) {
      found.push({
        kind: 'state',
        resource: resource.id,
        first: before,
        second: need.id,
        byS: seconds(byS),
      });
    }
    if (!last || need.endS > last.endS) last = { id: need.id, endS: need.endS };
  }
  return found;
}

/** For how long two parts that clash are in a pair of places that clash. */
function checkClash(clash: Clash, byId: ReadonlyMap<ActivityId, Placed>): Violation[] {
  const [upper, lower] = [byId.get(clash.upper.activity), byId.get(clash.lower.activity)];
  if (!upper || !lower) return [];
  const sits = ({ placement }: Placed, place: string) =>
    placement.uses.some(({ resource }) => resource === place);
  if (!clash.places.some(([up, low]) => sits(upper, up) && sits(lower, low))) return [];
  const above = spanOf(clash.upper.part, upper.placement);
  const below = spanOf(clash.lower.part, lower.placement);
  if (above.start >= above.end || below.start >= below.end || !overlaps(above, below)) return [];
  const forS = Math.min(above.end, below.end) - Math.max(above.start, below.start);
  return [{ kind: 'clash', clash, forS: seconds(forS) }];
}

function spanOf({ fromS, toS }: Part, { startS, endS }: Placement) {
  const end = toS === undefined ? endS : Math.min(endS, startS + toS);
  return { start: startS + fromS, end };
}
