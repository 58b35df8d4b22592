import type { NetMode } from './net.ts';
import { FAR_S } from './net.ts';
import type { Arcs } from './network.ts';
import { at, endOf, startOf } from './network.ts';

/**
 * Gives the modes of an activity the lengths that the lags leave them: what lies between its own
 * start and end may ask for more, or allow less, than the mode does. A start and an end can then be
 * chosen together. A mode that is left no length is left out, unless none remains.
 */
export function tightening(arcs: Arcs) {
  const longestPath = longestPaths(arcs);
  return (modes: readonly NetMode[], activity: number): readonly NetMode[] => {
    if (modes.every(({ minS, maxS }) => minS === maxS && minS === modes[0]?.minS)) return modes;
    const [start, end] = [startOf(activity), endOf(activity)];
    const leastS = longestPath(start, end);
    const mostS = -longestPath(end, start);
    const tight = modes.map((mode) => ({
      ...mode,
      minS: Math.max(mode.minS, leastS),
      maxS: Math.min(mode.maxS, mostS),
    }));
    const possible = tight.filter(({ minS, maxS }) => minS <= maxS);
    return possible.length > 0 ? possible : modes;
  };
}

/** Longest paths from node to node; the arcs have no positive cycle. */
function longestPaths(arcs: Arcs) {
  const lengthS = new Int32Array(arcs.out.first.length - 1).fill(-FAR_S);
  return (from: number, target: number): number => {
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
    const longestS = at(lengthS, target);
    for (const node of queue) lengthS[node] = -FAR_S;
    return longestS;
  };
}
