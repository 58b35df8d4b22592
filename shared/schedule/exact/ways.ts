import type { Net, NetMode } from '../net.ts';
import { at } from '../network.ts';

/** One way to do an activity: a mode, and a resource for each of its needs. */
export type Way = { readonly mode: NetMode; readonly uses: readonly number[] };

/** All ways to do an activity; uses that ask more of an empty resource than it has are none. */
export function waysOf(net: Net, activity: number): Way[] {
  return (net.modes[activity] ?? []).flatMap((mode) =>
    fillings(mode, 0)
      .filter((uses) => fits(net, mode, uses))
      .map((uses) => ({ mode, uses })),
  );
}

function fillings({ needs }: NetMode, need: number): number[][] {
  const asked = needs[need];
  if (!asked) return [[]];
  const rest = fillings({ needs } as NetMode, need + 1);
  return [...new Set(asked.resources)].flatMap((resource) =>
    rest.map((others) => [resource, ...others]),
  );
}

function fits({ resources }: Net, mode: NetMode, uses: readonly number[]): boolean {
  return uses.every((resource) => amountOn({ mode, uses }, resource) <= capacityOf(resource));

  function capacityOf(resource: number): number {
    return resources[resource]?.capacity ?? 0;
  }
}

/** How much of a resource a way takes. */
export function amountOn({ mode, uses }: Way, resource: number): number {
  return uses.reduce(
    (sum, used, need) => sum + (used === resource ? (mode.needs[need]?.amount ?? 0) : 0),
    0,
  );
}

/**
 * By resource, who is just like it: of the same size and hours, named by the same needs, in no
 * clash. Of such resources that nobody uses yet any one is as good as the other.
 */
export function twinsOf(net: Net): Int32Array {
  const inClash = new Set<number>();
  for (const { pairs } of net.clashes) {
    for (const pair of pairs) {
      inClash.add(Math.floor(pair / net.resources.length));
      inClash.add(pair % net.resources.length);
    }
  }
  const namedBy: string[] = net.resources.map(() => '');
  net.modes.forEach((modes, activity) => {
    for (const { index, needs } of modes) {
      needs.forEach(({ resources }, need) => {
        for (const resource of new Set(resources)) {
          namedBy[resource] += ` ${activity}/${index}/${need}`;
        }
      });
    }
  });
  const kinds = new Map<string, number>();
  return Int32Array.from(net.resources, ({ capacity, spans }, resource) => {
    const its = inClash.has(resource) ? ` alone ${resource}` : '';
    const kind = `${capacity} ${spans?.join() ?? ''}${namedBy[resource]}${its}`;
    if (!kinds.has(kind)) kinds.set(kind, resource);
    return at([kinds.get(kind) ?? resource], 0);
  });
}
