import { moreByArcS } from './asking.ts';
import { NOWHERE } from './by.ts';
import { tellAskedMore } from './dependents.ts';
import { Heap } from './heap.ts';
import { UNBOUND } from './live-net.ts';
import { at } from './network.ts';
import type { Rule } from './rule.ts';

/** A time may rise once for each member of its component, and so often more for its hours. */
const SPARE_RISES = 8;

/**
 * Works out all times, from below, where arcs go round in a circle that asks a time to come after
 * itself: one of them is given up (the same for the same facts), and is seen as broken then.
 */
export function raiseAll(rule: Rule, activities: Order): void {
  for (let node = rise(rule, activities); node !== NOWHERE; node = rise(rule, activities)) {
    const circle = circleAt(rule, node);
    // What runs rises by its far end alone.
    giveUpOne(rule, circle.length > 0 ? circle : circleAt(rule, node + 1), activities);
  }
}

/** Activities in the order of the arcs, with all that arcs join to any of them. */
type Order = Iterable<number>;

/**
 * Raises all times to the least that keep the rule: one pass in the order of the arcs, and then
 * what arcs back ask for. Answers with the near node of an activity that rises for ever, or
 * `NOWHERE`.
 */
export function rise(rule: Rule, activities: Order = rule.net.order): number {
  const { size, rank } = rule.net;
  rule.trust = 'all';
  for (const activity of activities) forget(rule, activity);
  for (const activity of activities) raise(rule, activity);
  const again = askedAgain(rule, activities);
  if (!again) return NOWHERE;
  const rises = new Int32Array(size);
  const tell = (activity: number) => again.set(activity, at(rank, activity));
  while (again.size > 0) {
    const activity = again.pop();
    rises[activity] = at(rises, activity) + 1;
    if (at(rises, activity) > risesMost(rule, activity)) return activity * 2;
    const near = activity * 2;
    const before = [at(rule.timeS, near), at(rule.timeS, near + 1)];
    raise(rule, activity);
    if (rule.timeS[near] !== before[0]) tellAskedMore(rule, near, tell);
    if (rule.timeS[near + 1] !== before[1]) tellAskedMore(rule, near + 1, tell);
  }
  return NOWHERE;
}

/** As if an activity had never been worked out. */
export function forget({ timeS, source }: Rule, activity: number): void {
  const near = activity * 2;
  timeS[near] = timeS[near + 1] = UNBOUND;
  source[near] = source[near + 1] = NOWHERE;
}

function risesMost({ net, arcs }: Rule, activity: number): number {
  const { size, members, component } = net;
  return SPARE_RISES + (arcs.added > 0 ? size : at(members, at(component, activity)));
}

function raise(rule: Rule, activity: number): void {
  rule.askNear(activity);
  rule.take(activity * 2);
  rule.askFar(activity);
  rule.take(activity * 2 + 1);
}

/** Whom arcs against the order ask for more than one pass gave them; undefined: nobody. */
function askedAgain(rule: Rule, activities: Order): Heap | undefined {
  const { arcs } = rule;
  const { rank, size } = rule.net;
  let again: Heap | undefined;
  const lookAt = (arc: number) => {
    if (moreByArcS(rule, arc) <= 0) return;
    const to = rule.toOf(arc);
    again ??= new Heap(size);
    again.set(to >> 1, at(rank, to >> 1));
  };
  if (activities === rule.net.order) for (let arc = 0; arc < arcs.count; arc++) lookAt(arc);
  else for (const arc of arcsOn(rule, activities)) lookAt(arc);
  return again;
}

/** All arcs into these activities, as the arcs face. */
function* arcsOn({ arcs }: Rule, activities: Order): Iterable<number> {
  for (const activity of activities) {
    for (const node of [activity * 2, activity * 2 + 1]) {
      for (let arc = at(arcs.firstInto, node); arc >= 0; arc = at(arcs.nextInto, arc)) yield arc;
    }
  }
}

/** The nodes from which a node's time comes round to itself; empty if it does not. */
function circleAt({ source }: Rule, start: number): number[] {
  let node = start;
  for (let step = 0; step < source.length && node !== NOWHERE; step++) node = at(source, node);
  if (node === NOWHERE) return [];
  const circle = [node];
  for (let next = at(source, node); next !== node; next = at(source, next)) circle.push(next);
  return circle;
}

/** A maximum lag if there is one, else the longest that a wait may be, else a link, else a lag. */
function giveUpOne(rule: Rule, circle: readonly number[], activities: Order): void {
  const { arcs, net } = rule;
  const into = circle.filter((node) => at(rule.by, node) >= 0);
  // By what they say, for an arc that was added may have any number.
  const byArc = into
    .map((node) => at(rule.by, node))
    .sort(
      (a, b) =>
        at(arcs.from, a) - at(arcs.from, b) ||
        at(arcs.to, a) - at(arcs.to, b) ||
        at(arcs.weightS, a) - at(arcs.weightS, b),
    );
  const maximum = byArc.find((arc) => arcs.back[arc] === 1);
  if (maximum !== undefined) {
    rule.givenUp.add(maximum);
    return;
  }
  const wait = into.find((node) => {
    const to = rule.toOf(at(rule.by, node));
    return to !== node && net.isWork[node >> 1] === 0;
  });
  if (wait !== undefined) {
    rule.tooLong[wait >> 1] = 1;
    return;
  }
  const arc =
    byArc.find((each) => arcs.lag[each] === -1) ?? byArc[0] ?? anyMaximum(rule, activities);
  rule.givenUp.add(arc);
}

/** Hours alone can keep times rising, with no circle to be seen: then a maximum is the reason. */
function anyMaximum(rule: Rule, activities: Order): number {
  const { arcs, givenUp } = rule;
  let least = -1;
  for (const arc of arcsOn(rule, activities)) {
    const isNext = arcs.back[arc] === 1 && !givenUp.has(arc);
    if (isNext && (least < 0 || arc < least)) least = arc;
  }
  return Math.max(0, least);
}
