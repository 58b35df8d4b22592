import type { NetMode } from './net.ts';
import { FAR_S } from './net.ts';
import type { Arcs } from './network.ts';
import { at, endOf, startOf } from './network.ts';

/**
 * The modes of an activity with the lengths that the lags leave them: what lies between its own
 * start and end may ask for more, or allow less, than the mode does. A start and an end can then be
 * chosen together. A mode that is left no length is left out, unless none remains.
 */
export function tightened(
  modes: readonly NetMode[],
  activity: number,
  arcs: Arcs,
): readonly NetMode[] {
  if (modes.every(({ minS, maxS }) => minS === maxS && minS === modes[0]?.minS)) return modes;
  const [start, end] = [startOf(activity), endOf(activity)];
  const leastS = longestPath(arcs, start, end);
  const mostS = -longestPath(arcs, end, start);
  const tight = modes.map((mode) => ({
    ...mode,
    minS: Math.max(mode.minS, leastS),
    maxS: Math.min(mode.maxS, mostS),
  }));
  const possible = tight.filter(({ minS, maxS }) => minS <= maxS);
  return possible.length > 0 ? possible : modes;
}

/** The longest path from node to node; the arcs have no positive cycle. */
function longestPath(arcs: Arcs, from: number, target: number): number {
  const lengthS = new Int32Array(arcs.out.first.length - 1).fill(-FAR_S);
  lengthS[from] = 0;
  const queue = [from];
  for (let head = 0; head < queue.length; head++) {
    const node = at(queue, head);
    for (let i = at(arcs.out.first, node); i < at(arcs.out.first, node + 1); i++) {
      const arc = at(arcs.out.items, i);
      const next = at(arcs.to, arc);
      const reachedS = at(lengthS, node) + at(arcs.weightS, arc);
      if (reachedS <= at(lengthS, next)) continue;
      lengthS[next] = reachedS;
      queue.push(next);
    }
  }
  return at(lengthS, target);
}
