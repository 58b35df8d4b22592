import { must } from '../kernel/index.ts';
import { lengthBounds } from './arcs-of-problem.ts';
import type { Activity, CapacityResource, Conflict, Mode, Problem, ResourceId } from './model.ts';

type Unfilled = Extract<Conflict, { kind: 'no-resource' }>;
type Capacities = ReadonlyMap<ResourceId, CapacityResource>;

/**
 * Activities that no mode can do, even alone on an empty day: for each, what its first mode lacks.
 */
export function unfillable(problem: Problem): Unfilled[] {
  const capacities: Capacities = new Map(
    problem.resources.flatMap((each) => (each.kind === 'capacity' ? [[each.id, each]] : [])),
  );
  return problem.activities.flatMap((activity) => {
    const lacking = activity.modes
      .filter(({ id }) => !activity.pin || activity.pin.mode === id)
      .map((mode) => lackOf(activity, mode, capacities));
    const first = lacking[0];
    return first && !lacking.includes(undefined) ? [first] : [];
  });
}

/** A need that cannot be filled beside the needs before it, in whatever way those are filled. */
function lackOf(activity: Activity, mode: Mode, capacities: Capacities): Unfilled | undefined {
  const { pin } = activity;
  const { minS } = lengthBounds(mode.length, 0);
  const taken = new Map<ResourceId, number>();
  let furthest = -1;
  let most = 0;
  const fill = (number: number): boolean => {
    const need = mode.needs[number];
    if (!need) return true;
    const pinned = pin?.uses?.find((use) => use.need === number)?.resource;
    for (const id of pinned ? [pinned] : need.oneOf) {
      const resource = must(capacities.get(id), id);
      const already = taken.get(id) ?? 0;
      const isOpen = pin?.startS !== undefined || pin?.endS !== undefined || opens(resource, minS);
      const left = isOpen ? resource.capacity - already : 0;
      if (number > furthest) [furthest, most] = [number, 0];
      if (number === furthest) most = Math.max(most, left);
      if (left < need.amount) continue;
      taken.set(id, already + need.amount);
      if (fill(number + 1)) return true;
      taken.set(id, already);
    }
    return false;
  };
  if (fill(0)) return undefined;
  const need = must(mode.needs[Math.max(0, furthest)], activity.id);
  return {
    kind: 'no-resource',
    activity: activity.id,
    role: need.role,
    amount: need.amount,
    most,
  };
}

/** Whether it is ever open for so long at a stretch. */
function opens({ open }: CapacityResource, lengthS: number): boolean {
  return open?.some(({ start, end }) => end - start >= lengthS) ?? true;
}
