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
    if (at(arcs.handsOn, arc) >= 0 && rule.shared[activity] === 1) {
      tellThrough(rule, activity, at(arcs.handsOn, arc), tell);
    }
    if (hangsOn(rule, activity, node)) tell(activity);
    else if (timeS + at(arcs.weightS, arc) > at(rule.timeS, to)) {
      if (!rule.isFact(to) && rule.holds(arc)) tell(activity);
    }
  }
}

/** Tells who waits, through a started activity, for those who still hold its units too. */
function tellThrough(
  rule: Rule,
  activity: number,
  resource: number,
  tell: (activity: number) => void,
): void {
  const { arcs } = rule.net;
  const far = activity * 2 + 1;
  for (let i = at(arcs.out.first, far); i < at(arcs.out.first, far + 1); i++) {
    const arc = at(arcs.out.items, i);
    if (at(arcs.handsOn, arc) !== resource) continue;
    const next = at(arcs.to, arc) >> 1;
    tell(next);
    if (rule.shared[next] === 1) tellThrough(rule, next, resource, tell);
  }
}

function hangsOn({ source }: Rule, activity: number, node: number): boolean {
  return source[activity * 2] === node || source[activity * 2 + 1] === node;
}
