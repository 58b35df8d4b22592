import { at } from './network.ts';
import type { Rule } from './rule.ts';

/** Tells every activity that hangs on a node, or that is now asked for more by it. */
export function tellDependents(rule: Rule, node: number, tell: (activity: number) => void): void {
  const { arcs, source } = rule;
  const isForward = rule.net.facing === 'forward';
  const flip = isForward ? 0 : 1;
  const heads = isForward ? arcs.to : arcs.from;
  const next = isForward ? arcs.nextOut : arcs.nextInto;
  const timeS = at(rule.timeS, node);
  let arc = at(isForward ? arcs.firstOut : arcs.firstInto, node ^ flip);
  for (; arc >= 0; arc = at(next, arc)) {
    const to = at(heads, arc) ^ flip;
    const near = to & ~1;
    if (source[near] === node || source[near + 1] === node) tell(to >> 1);
    else if (timeS + at(arcs.weightS, arc) > at(rule.timeS, to)) {
      if (!rule.isFact(to) && rule.holds(arc)) tell(to >> 1);
    }
  }
}
