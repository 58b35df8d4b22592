import type { Net, NetMode } from '../net.ts';
import { at } from '../network.ts';

/** Resources that stand in for one another, and who cannot but use some of them. */
export type Crew = {
  readonly units: readonly Units[];
  readonly members: readonly Member[];
};

/** So many units are there, from one moment to another; in the mirror, as times are negated. */
export type Units = { readonly capacity: number; readonly spans: Int32Array | undefined };

/** The least that any mode asks of a unit, and the longest that any mode must be. */
export type Member = {
  readonly activity: number;
  readonly workS: number;
  readonly lengthS: number;
};

/**
 * Crews of a net: resources are of one crew where a need leaves the choice between them, or where
 * one mode takes one and another mode of the same activity, for its need of the same place in the
 * list, the other.
 */
export function crewsOf(net: Net, isCounted: (activity: number) => boolean): Crew[] {
  const parent = net.resources.map((_, i) => i);
  const rootOf = (resource: number): number => {
    let root = resource;
    while (at(parent, root) !== root) root = at(parent, root);
    return root;
  };
  const asked = net.modes.flatMap((modes, activity) =>
    isCounted(activity) && modes.length > 0 ? commonNeeds(modes, activity) : [],
  );
  for (const { resources } of asked) {
    const [first = 0] = resources;
    for (const other of resources) parent[rootOf(other)] = rootOf(first);
  }
  const crews = new Map<number, Gathered>();
  net.resources.forEach(({ capacity, spans }, i) => {
    const crew: Gathered = crews.get(rootOf(i)) ?? { units: [], members: new Map() };
    crew.units.push({ capacity, spans });
    crews.set(rootOf(i), crew);
  });
  for (const { activity, resources, lengthS, ...asks } of asked) {
    const members = crews.get(rootOf(resources[0] ?? 0))?.members;
    const workS = asks.workS + (members?.get(activity)?.workS ?? 0);
    members?.set(activity, { activity, lengthS, workS });
  }
  return [...crews.values()].map(({ units, members }) => ({
    units,
    members: [...members.values()],
  }));
}

type Gathered = { readonly units: Units[]; readonly members: Map<number, Member> };

/** Needs that every mode has at the same place, with the least that any mode asks. */
function commonNeeds(modes: readonly NetMode[], activity: number) {
  const count = Math.min(...modes.map(({ needs }) => needs.length));
  const lengthS = Math.max(...modes.map(({ minS }) => minS));
  return Array.from({ length: count }, (_, place) => {
    const works = modes.map(({ minS, needs }) => minS * (needs[place]?.amount ?? 0));
    const resources = modes.flatMap(({ needs }) => needs[place]?.resources ?? []);
    return { activity, lengthS, workS: Math.min(...works), resources };
  });
}
