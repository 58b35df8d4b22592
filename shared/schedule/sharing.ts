import { must } from '../kernel/index.ts';
import type { Index } from './index-of.ts';
import type {
  CapacityResource,
  Clash,
  Link,
  Mode,
  Placement,
  Problem,
  ResourceId,
  StateResource,
} from './model.ts';

/** Something that several activities share, and which therefore puts them in an order. */
export type Sharing =
  | {
      readonly kind: 'capacity';
      readonly resource: CapacityResource;
      readonly users: readonly { readonly activity: number; readonly amount: number }[];
    }
  | {
      readonly kind: 'state';
      readonly resource: StateResource;
      readonly users: readonly { readonly activity: number; readonly state: string }[];
    }
  | {
      readonly kind: 'clash';
      readonly clash: Clash;
      readonly places: readonly [upper: ResourceId, lower: ResourceId];
      /** The upper one, and the lower one. */
      readonly users: readonly { readonly activity: number }[];
    };

/** All that placements share, among two activities or more. */
export function sharingsOf(
  problem: Problem,
  index: Index,
  placements: readonly Placement[],
): Sharing[] {
  const users = usersOf(problem, index, placements);
  const onResources = problem.resources.map((resource, i): Sharing => {
    const { states = [], amounts = [] } = users[i] ?? {};
    return resource.kind === 'state'
      ? { kind: 'state', resource, users: states }
      : { kind: 'capacity', resource, users: amounts };
  });
  const placed: Placed = new Map(placements.map((each) => [each.activity, each]));
  const clashes = problem.clashes.flatMap((clash) => clashing(clash, index, placed));
  return [...onResources, ...clashes].filter(({ users }) => users.length > 1);
}

/** By resource: who needs it in which state, and who takes how much of it. */
function usersOf(problem: Problem, index: Index, placements: readonly Placement[]) {
  const users = problem.resources.map(() => ({
    states: [] as { activity: number; state: string }[],
    amounts: [] as { activity: number; amount: number }[],
  }));
  for (const placement of placements) {
    const activity = index.activity(placement.activity);
    const { modes } = must(problem.activities[activity], placement.activity);
    const mode = must(
      modes.find(({ id }) => id === placement.mode),
      placement.mode,
    );
    for (const { resource, state } of mode.states) {
      users[index.resource(resource)]?.states.push({ activity, state });
    }
    for (const resource of new Set(placement.uses.map((use) => use.resource))) {
      const amount = amountOn(resource, placement, mode);
      if (amount > 0) users[index.resource(resource)]?.amounts.push({ activity, amount });
    }
  }
  return users;
}

function amountOn(resource: ResourceId, { uses }: Placement, { needs }: Mode): number {
  return uses.reduce(
    (sum, use) => sum + (use.resource === resource ? (needs[use.need]?.amount ?? 0) : 0),
    0,
  );
}

type Placed = ReadonlyMap<Placement['activity'], Placement>;

function clashing(clash: Clash, index: Index, placed: Placed): Sharing[] {
  const [upper, lower] = [placed.get(clash.upper.activity), placed.get(clash.lower.activity)];
  const isIn = (placement: Placement | undefined, place: ResourceId) =>
    placement?.uses.some(({ resource }) => resource === place);
  const places = clash.places.find(([up, low]) => isIn(upper, up) && isIn(lower, low));
  if (!places) return [];
  const users = [clash.upper, clash.lower].map((side) => ({
    activity: index.activity(side.activity),
  }));
  return [{ kind: 'clash', clash, places, users }];
}

/** Whether an order on this sharing is what a link stands for. */
export function isLinkOn({ from, to, resource, reason }: Link, sharing: Sharing): boolean {
  if (sharing.kind !== 'clash') return reason === undefined && resource === sharing.resource.id;
  const { upper, lower } = sharing.clash;
  return (
    reason === sharing.clash.reason &&
    ((from === upper.activity && to === lower.activity) ||
      (from === lower.activity && to === upper.activity))
  );
}
