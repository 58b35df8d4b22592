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
  const modes = placements.map(({ activity, mode }) =>
    must(
      problem.activities[index.activity(activity)]?.modes.find(({ id }) => id === mode),
      activity,
    ),
  );
  const onResources = problem.resources.map((resource): Sharing => {
    if (resource.kind === 'state') {
      const users = placements.flatMap(({ activity }, i) => {
        const need = modes[i]?.states.find((state) => state.resource === resource.id);
        return need ? [{ activity: index.activity(activity), state: need.state }] : [];
      });
      return { kind: 'state', resource, users };
    }
    const users = placements.flatMap((placement, i) => {
      const amount = amountOn(resource.id, placement, must(modes[i], placement.activity));
      return amount > 0 ? [{ activity: index.activity(placement.activity), amount }] : [];
    });
    return { kind: 'capacity', resource, users };
  });
  const clashes = problem.clashes.flatMap((clash) => clashing(clash, index, placements));
  return [...onResources, ...clashes].filter(({ users }) => users.length > 1);
}

function amountOn(resource: ResourceId, { uses }: Placement, { needs }: Mode): number {
  return uses.reduce(
    (sum, use) => sum + (use.resource === resource ? (needs[use.need]?.amount ?? 0) : 0),
    0,
  );
}

function clashing(clash: Clash, index: Index, placements: readonly Placement[]): Sharing[] {
  const placed = (activity: Placement['activity']) =>
    placements.find((placement) => placement.activity === activity);
  const [upper, lower] = [placed(clash.upper.activity), placed(clash.lower.activity)];
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
