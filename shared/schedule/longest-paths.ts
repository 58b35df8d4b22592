import type { Arcs } from './network.ts';
import { at } from './network.ts';
import { GIVEN } from './windows.ts';

export type LongestPaths =
  | { readonly ok: true; readonly timeS: Int32Array; readonly by: Int32Array }
  /** Nodes of a circle of arcs that sum up to more than nothing. */
  | { readonly ok: false; readonly cycle: readonly number[]; readonly excessS: number };

/**
 * The earliest time of each node from its floor on, with the arc it hangs on; or a circle that asks
 * a node to come after itself. Rounds over all arcs (Bellman and Ford), since this runs once.
 */
export function longestPaths(arcs: Arcs, floorS: Int32Array): LongestPaths {
  const timeS = floorS.slice();
  const by = new Int32Array(floorS.length).fill(GIVEN);
  let raised = GIVEN;
  for (let round = 0; round <= floorS.length; round++) {
    raised = GIVEN;
    for (let arc = 0; arc < arcs.count; arc++) {
      const to = at(arcs.to, arc);
      const asked = at(timeS, at(arcs.from, arc)) + at(arcs.weightS, arc);
      if (asked <= at(timeS, to)) continue;
      timeS[to] = asked;
      by[to] = arc;
      raised = to;
    }
    if (raised === GIVEN) return { ok: true, timeS, by };
  }
  return circleBefore(raised, arcs, by);
}

/** Goes back far enough from a node that still rises to be on the circle, and then once round. */
function circleBefore(raised: number, arcs: Arcs, by: Int32Array): LongestPaths {
  const before = (node: number) => at(arcs.from, at(by, node));
  let node = raised;
  for (let step = 0; step < by.length; step++) node = before(node);
  const cycle = [node];
  let excessS = at(arcs.weightS, at(by, node));
  for (let next = before(node); next !== node; next = before(next)) {
    cycle.push(next);
    excessS += at(arcs.weightS, at(by, next));
  }
  return { ok: false, cycle: cycle.reverse(), excessS };
}
