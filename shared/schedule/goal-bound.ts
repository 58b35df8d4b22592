import type { Net } from './net.ts';
import { activityOf, at } from './network.ts';

/**
 * The activities that must be over, or begun, before something that has a date: they are planned
 * late. The others (sorting trim, cleaning up) are planned early. Pinned ones count as bound.
 */
export function goalBound({ arcs, dated }: Pick<Net, 'arcs' | 'dated'>): ReadonlySet<number> {
  const reached = new Set([...dated.keys()].filter((node) => dated[node] === 1));
  for (const node of reached) {
    for (let i = at(arcs.into.first, node); i < at(arcs.into.first, node + 1); i++) {
      const arc = at(arcs.into.items, i);
      const orders = arcs.back[arc] === 0 || at(arcs.weightS, arc) > 0;
      if (orders) reached.add(at(arcs.from, arc));
    }
  }
  return new Set([...reached].map(activityOf));
}
