import { at } from './network.ts';
import type { Rule } from './rule.ts';

/** Tells every activity that hangs on a node, or that is now asked for more by it. */
export function tellDependents(rule: Rule, node: number, tell: (activity: number) => void): void {
  const { arcs } = rule.net;
  const timeS = at(rule.timeS, node);
  for (let i = at(arcs.out.first, node), end = at(arcs.out.first, node + 1); i < end; i++) {
    const arc = at(arcs.out.items, i);
    const to = at(arcs.to, arc);
    const activity = to >> 1;
    if (hangsOn(rule, activity, node)) tell(activity);
    else if (timeS + at(arcs.weightS, arc) > at(rule.timeS, to)) {
      if (!rule.isFact(to) && rule.holds(arc)) tell(activity);
    }
  }
}

function hangsOn({ source }: Rule, activity: number, node: number): boolean {
  return source[activity * 2] === node || source[activity * 2 + 1] === node;
}
