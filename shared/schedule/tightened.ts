import { assert } from '../kernel/index.ts';
import { Heap } from './heap.ts';
import { longestPaths } from './longest-paths.ts';
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
  const longestPath = pathsOver(arcs);
  return (modes: readonly NetMode[], activity: number): readonly NetMode[] => {
    if (modes.every(({ minS, maxS }) => minS === maxS && minS === modes[0]?.minS)) return modes;
    const [start, end] = [startOf(activity), endOf(activity)];
    const leastS = longestPath(start, end, Math.min(...modes.map(({ minS }) => minS)));
    const mostS = -longestPath(end, start, -Math.max(...modes.map(({ maxS }) => maxS)));
    const tight = modes.map((mode) => ({
      ...mode,
      minS: Math.max(mode.minS, leastS),
      maxS: Math.min(mode.maxS, mostS),
    }));
    const possible = tight.filter(({ minS, maxS }) => minS <= maxS);
    return possible.length > 0 ? possible : modes;
  };
}

/**
 * Longest paths from node to node, where they are longer than is asked for; else -`FAR_S`. The arcs
 * have no positive cycle, so that the earliest times by them turn every arc into a detour of nought
 * or more, and the shortest detour is found first (Johnson, Journal of the ACM 24, 1977; from
 * memory): what is too long a detour is never looked at.
 */
function pathsOver(arcs: Arcs) {
  const nodes = arcs.out.first.length - 1;
  const earliest = longestPaths(arcs, new Int32Array(nodes));
  assert(earliest.ok, 'lags that contradict each other are refused before');
  const { timeS } = earliest;
  const detourS = new Int32Array(nodes).fill(FAR_S);
  const heap = new Heap(nodes);
  return (from: number, target: number, overS: number): number => {
    const directS = at(timeS, target) - at(timeS, from);
    const reached = [from];
    detourS[from] = 0;
    heap.set(from, 0);
    let longestS = -FAR_S;
    while (heap.size > 0 && heap.least < directS - overS) {
      const node = heap.pop();
      if (node === target) {
        longestS = directS - at(detourS, node);
        break;
      }
      for (let i = at(arcs.out.first, node); i < at(arcs.out.first, node + 1); i++) {
        const arc = at(arcs.out.items, i);
        const next = at(arcs.to, arc);
        const alongS = at(timeS, next) - at(timeS, node) - at(arcs.weightS, arc);
        const byS = at(detourS, node) + alongS;
        if (byS >= at(detourS, next)) continue;
        detourS[next] = byS;
        heap.set(next, byS);
        reached.push(next);
      }
    }
    while (heap.size > 0) heap.pop();
    for (const node of reached) detourS[node] = FAR_S;
    return longestS;
  };
}
