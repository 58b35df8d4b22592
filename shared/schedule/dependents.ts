import { moreByArcS } from './asking.ts';
import { at } from './network.ts';
import type { Rule } from './rule.ts';

type Tell = (activity: number) => void;

/** Tells every activity that hangs on a node; `isLost`: only by what holds no more. */
export function tellHanging(rule: Rule, node: number, isLost: boolean, tell: Tell): void {
  const { source } = rule;
  const { first, next, heads, flip } = outward(rule);
  for (let arc = at(first, node ^ flip); arc >= 0; arc = at(next, arc)) {
    const near = (at(heads, arc) ^ flip) & ~1;
    if (source[near] !== node && source[near + 1] !== node) continue;
    if (!(isLost && rule.holds(arc))) tell(near >> 1);
  }
}

/** Tells every activity that a node asks for more than it has, and by how much. */
export function tellAskedMore(
  rule: Rule,
  node: number,
  tell: (activity: number, moreS: number) => void,
): void {
  const { first, next, heads, flip } = outward(rule);
  for (let arc = at(first, node ^ flip); arc >= 0; arc = at(next, arc)) {
    const moreS = moreByArcS(rule, arc);
    if (moreS > 0) tell((at(heads, arc) ^ flip) >> 1, moreS);
  }
}

/** The arcs out of nodes, as the net faces them. */
function outward({ arcs, net }: Rule) {
  return net.facing === 'forward'
    ? { first: arcs.firstOut, next: arcs.nextOut, heads: arcs.to, flip: 0 }
    : { first: arcs.firstInto, next: arcs.nextInto, heads: arcs.from, flip: 1 };
}
