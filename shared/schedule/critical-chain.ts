import { must, seconds } from '../kernel/index.ts';
import { nodeOf } from './arcs-of-problem.ts';
import type { Live } from './live.ts';
import type { Goal } from './model.ts';
import { at } from './network.ts';
import { reasonByArc, reasonOf } from './reasons.ts';
import type { Reason, Step } from './timeline-types.ts';

/** What asks most of a node: where from, how late it could be, and in what way. */
type Asking = { readonly from: number; readonly askedS: number; readonly reason: () => Reason };

/** The chain before a goal with the least to spare at each link, first thing first. */
export function criticalChain(live: Live, goal: Goal): Step[] {
  const { published, earliest } = live;
  const steps: Step[] = [];
  const seen = new Set<number>();
  let node: number | undefined = nodeOf(goal, published.index);
  while (node !== undefined && !seen.has(node)) {
    seen.add(node);
    const atS = at(earliest.rule.timeS, node);
    const asking: Asking | undefined = earliest.rule.isFact(node)
      ? undefined
      : mostAsking(live, node);
    const spareS = asking ? atS - asking.askedS : 0;
    steps.push({
      activity: must(published.placements[node >> 1], 'placed').activity,
      end: (node & 1) === 0 ? 'start' : 'end',
      atS: seconds(atS),
      reason: asking && spareS === 0 ? asking.reason() : reasonOf(live, node),
      spareS: seconds(spareS),
    });
    node = asking?.from;
  }
  return steps.reverse();
}

function mostAsking(live: Live, node: number): Asking | undefined {
  const { arcs, earliest, facts } = live;
  const { timeS } = earliest.rule;
  let most: Asking | undefined;
  if ((node & 1) === 1) {
    const lengthS = at(facts.minS, node >> 1);
    const reason = (): Reason => ({ kind: 'length', lengthS: seconds(lengthS) });
    most = { from: node - 1, askedS: at(timeS, node - 1) + lengthS, reason };
  }
  for (let arc = at(arcs.firstInto, node); arc >= 0; arc = at(arcs.nextInto, arc)) {
    const askedS = at(timeS, at(arcs.from, arc)) + at(arcs.weightS, arc);
    if (arcs.back[arc] === 1 || !earliest.rule.holds(arc)) continue;
    if (most && askedS <= most.askedS) continue;
    most = { from: at(arcs.from, arc), askedS, reason: () => reasonByArc(live, arc) };
  }
  return most;
}
