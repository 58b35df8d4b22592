import { type ActivityId, must } from '../kernel/index.ts';
import type {
  Activity,
  Clash,
  Mode,
  Placement,
  Problem,
  ResourceId,
  Schedule,
} from '../schedule/index.ts';
import { isStay } from './pooled.ts';

/** After so many tries it is begun anew, so often: what found no rack chooses first then. */
const MOST_TRIES = 2_000;
const MOST_BEGINNINGS = 24;

/** A load with its times, and the ways in which it can lie. */
type Load = { readonly placement: Placement; readonly ways: readonly Mode[] };
type Lying = { readonly placement: Placement; readonly way: Mode };

/**
 * Gives the loads of a schedule whose smokers were pooled their racks: by room, by weight, and so
 * that nothing drips on what it may not. The earlier a load comes, the higher it lies, since what
 * comes later is rawer. Where these times fit no racks, the load that finds none is named.
 */
export function layOut(problem: Problem, { placements }: Schedule): LaidOut {
  const activities = new Map(problem.activities.map((activity) => [activity.id, activity]));
  const steady = steadyFires(problem);
  const loads = placements.flatMap((placement): Load[] => {
    const activity = activities.get(placement.activity);
    return activity && isStay(activity)
      ? [{ placement, ways: waysFor(activity, placement, steady) }]
      : [];
  });
  const lying = laid(loads, problem);
  if (!Array.isArray(lying)) return { ok: false, stuck: lying };
  const wayOf = new Map(lying.map(({ placement, way }) => [placement.activity, way]));
  return { ok: true, placements: placements.map((each) => lain(each, wayOf.get(each.activity))) };
}

export type LaidOut =
  | { readonly ok: true; readonly placements: readonly Placement[] }
  | { readonly ok: false; readonly stuck: Placement };

function lain(placement: Placement, way: Mode | undefined): Placement {
  if (!way) return placement;
  const uses = way.needs.flatMap(({ oneOf: [resource] }, need) =>
    resource ? [{ need, resource }] : [],
  );
  return { ...placement, mode: way.id, uses };
}

/** Every load on a rack, or the one that stayed without. */
function laid(loads: readonly Load[], problem: Problem): Lying[] | Placement {
  const order = loads.toSorted((a, b) => a.placement.startS - b.placement.startS);
  for (let beginning = 1; ; beginning++) {
    const racks = new Racks(problem, order);
    const lying = racks.lay(order);
    if (lying) return [...lying];
    const [stuck] = order.splice(racks.deepest, 1);
    if (beginning === MOST_BEGINNINGS) return must(stuck, 'a load that found no rack').placement;
    order.unshift(...(stuck ? [stuck] : []));
  }
}

/** First the racks of the smoker it was planned in, then those of others that burn as it wants. */
function waysFor(
  { modes }: Activity,
  { mode }: Placement,
  steady: ReadonlySet<string>,
): readonly Mode[] {
  const burnsAt = ({ states: [fire] }: Mode) => fire && `${fire.resource} ${fire.state}`;
  const planned = modes.filter((each) => burnsAt(each) === mode);
  const others = modes.filter((each) => burnsAt(each) !== mode && steady.has(burnsAt(each) ?? ''));
  return [...planned, ...others];
}

/** Fires that nothing in the problem ever changes. */
function steadyFires({ activities }: Problem): ReadonlySet<string> {
  const states = new Map<ResourceId, Set<string>>();
  for (const { resource, state } of activities.flatMap(({ modes }) =>
    modes.flatMap((mode) => mode.states),
  )) {
    states.set(resource, (states.get(resource) ?? new Set()).add(state));
  }
  const steady = [...states].flatMap(([fire, its]) =>
    its.size === 1 ? [...its].map((state) => `${fire} ${state}`) : [],
  );
  return new Set(steady);
}

class Racks {
  readonly #capacity: ReadonlyMap<ResourceId, number>;
  /** By what is above, and what is below it: on which racks it would drip at these times. */
  readonly #drops = new Map<ActivityId, Map<ActivityId, Clash['places'][]>>();
  /** How many loads found a rack at once, at the best try. */
  deepest = 0;
  #tries = 0;

  constructor({ resources, clashes }: Problem, loads: readonly Load[]) {
    this.#capacity = new Map(
      resources.flatMap((each): [ResourceId, number][] =>
        each.kind === 'capacity' ? [[each.id, each.capacity]] : [],
      ),
    );
    const times = new Map(loads.map(({ placement }) => [placement.activity, placement]));
    for (const { upper, lower, places } of clashes) {
      const [above, under] = [times.get(upper.activity), times.get(lower.activity)];
      if (!above || !under || !meet(partOf(above, upper.part), partOf(under, lower.part))) continue;
      const below = this.#drops.get(upper.activity) ?? new Map<ActivityId, Clash['places'][]>();
      this.#drops.set(upper.activity, below);
      below.set(lower.activity, [...(below.get(lower.activity) ?? []), places]);
    }
  }

  /** One rack for each load, going back where a choice leads into a corner. */
  lay(loads: readonly Load[], lying: readonly Lying[] = []): readonly Lying[] | null {
    const load = loads[lying.length];
    if (load === undefined) return lying;
    this.deepest = Math.max(this.deepest, lying.length);
    for (const way of load.ways) {
      if (++this.#tries > MOST_TRIES) return null;
      const next = { placement: load.placement, way };
      if (!this.#fits(next, lying)) continue;
      const laid = this.lay(loads, [...lying, next]);
      if (laid !== null) return laid;
    }
    return null;
  }

  #fits(load: Lying, lying: readonly Lying[]): boolean {
    const beside = lying.filter(({ placement }) => meet(placement, load.placement));
    return (
      [...load.way.needs.keys()].every((number) => this.#hasRoom(load, number, beside)) &&
      beside.every((other) => !this.#drips(load, other) && !this.#drips(other, load))
    );
  }

  #hasRoom({ placement, way }: Lying, number: number, beside: readonly Lying[]): boolean {
    const need = way.needs[number];
    const [resource] = need?.oneOf ?? [];
    if (!need || !resource) return true;
    const leftOver = (this.#capacity.get(resource) ?? 0) - need.amount;
    const same = beside.filter(({ way: { needs } }) => needs[number]?.oneOf[0] === resource);
    return (
      takenAt(same, number, placement.startS) <= leftOver &&
      same.every(
        ({ placement: { startS } }) =>
          startS <= placement.startS || takenAt(same, number, startS) <= leftOver,
      )
    );
  }

  #drips(upper: Lying, lower: Lying): boolean {
    const drops = this.#drops.get(upper.placement.activity)?.get(lower.placement.activity);
    if (!drops) return false;
    const up = upper.way.needs[0]?.oneOf[0];
    const low = lower.way.needs[0]?.oneOf[0];
    return drops.some((places) => places.some((pair) => pair[0] === up && pair[1] === low));
  }
}

/** What these take at a time, by their need of that number. */
function takenAt(lying: readonly Lying[], number: number, atS: number): number {
  let taken = 0;
  for (const { placement, way } of lying) {
    if (placement.startS > atS || placement.endS <= atS) continue;
    taken += way.needs[number]?.amount ?? 0;
  }
  return taken;
}

type Times = { readonly startS: number; readonly endS: number };

const meet = (a: Times, b: Times) => a.startS < b.endS && b.startS < a.endS;

function partOf({ startS, endS }: Placement, { fromS, toS }: Clash['upper']['part']): Times {
  return {
    startS: Math.min(endS, startS + fromS),
    endS: toS === undefined ? endS : Math.min(endS, startS + toS),
  };
}
