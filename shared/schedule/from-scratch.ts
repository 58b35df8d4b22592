import { NOWHERE } from './by.ts';
import { tellDependents } from './dependents.ts';
import { Heap } from './heap.ts';
import { UNBOUND } from './live-net.ts';
import { at } from './network.ts';
import type { Rule } from './rule.ts';

/** A time may rise once for each member of its component, and so often more for its hours. */
const SPARE_RISES = 8;

/**
 * Works out all times, from below. Where arcs go round in a circle that asks a time to come after
 * itself, one of them is given up (the same for the same facts) and is seen as broken then. Answers
 * whether every time hangs on something in the end, so that changes can be followed.
 */
export function fromScratch(rule: Rule): boolean {
  rule.givenUp.fill(0);
  rule.tooLong.fill(0);
  let isWhole = true;
  for (let node = rise(rule); node !== NOWHERE; node = rise(rule)) {
    giveUpOne(rule, circleAt(rule, node));
    isWhole = false;
  }
  return ground(rule) && isWhole;
}

/** Raises all times to the least that keep the rule; or answers with a node on a circle. */
export function rise(rule: Rule): number {
  const { size, order, rank, component } = rule.net;
  rule.timeS.fill(UNBOUND);
  rule.source.fill(NOWHERE);
  rule.trust = 'all';
  const members = new Int32Array(size);
  for (const number of component) members[number] = at(members, number) + 1;
  const rises = new Int32Array(size);
  const again = new Heap(size);
  let done = 0;
  const tell = (activity: number) => {
    if (at(rank, activity) < done) again.set(activity, at(rank, activity));
  };
  for (; done < size; done++) raise(rule, at(order, done), tell);
  while (again.size > 0) {
    const activity = again.pop();
    rises[activity] = at(rises, activity) + 1;
    const risesMost = at(members, at(component, activity)) + SPARE_RISES;
    if (at(rises, activity) > risesMost) return activity * 2;
    raise(rule, activity, tell);
  }
  return NOWHERE;
}

function raise(rule: Rule, activity: number, tell: (activity: number) => void): void {
  const near = activity * 2;
  rule.askNear(activity);
  if (rule.take(near)) tellDependents(rule, near, tell);
  rule.askFar(activity);
  if (rule.take(near + 1)) tellDependents(rule, near + 1, tell);
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
function giveUpOne(rule: Rule, circle: readonly number[]): void {
  const { arcs, isWork } = rule.net;
  const into = circle.filter((node) => at(rule.by, node) >= 0);
  const byArc = into.map((node) => at(rule.by, node)).sort((a, b) => a - b);
  const maximum = byArc.find((arc) => arcs.back[arc] === 1);
  if (maximum !== undefined) {
    rule.givenUp[maximum] = 1;
    return;
  }
  const wait = into.find((node) => {
    const to = at(arcs.to, at(rule.by, node));
    return to !== node && isWork[node >> 1] === 0;
  });
  if (wait !== undefined) {
    rule.tooLong[wait >> 1] = 1;
    return;
  }
  const arc = byArc.find((each) => at(arcs.handsOn, each) >= 0) ?? byArc[0] ?? anyMaximum(rule);
  rule.givenUp[arc] = 1;
}

/** Hours alone can keep times rising, with no circle to be seen: then a maximum is the reason. */
function anyMaximum({ net, givenUp }: Rule): number {
  for (let arc = 0; arc < net.arcs.count; arc++) {
    if (net.arcs.back[arc] === 1 && givenUp[arc] === 0) return arc;
  }
  return 0;
}

/**
 * Finds for every time something that it hangs on which does not hang on it. None is found where
 * hours made a time jump on account of another that then followed it.
 */
function ground(rule: Rule): boolean {
  const { size, order } = rule.net;
  rule.trust = 'grounded';
  rule.grounded.fill(0);
  let missing = size * 2;
  for (let before = missing + 1; missing > 0 && missing < before; ) {
    before = missing;
    for (let i = 0; i < size; i++) missing -= groundEnds(rule, at(order, i));
  }
  for (let node = 0; node < size * 2; node++) {
    if (rule.grounded[node] === 0) rule.source[node] = NOWHERE;
  }
  return missing === 0;
}

function groundEnds(rule: Rule, activity: number): number {
  let found = 0;
  for (const node of [activity * 2, activity * 2 + 1]) {
    if (rule.grounded[node] === 1) continue;
    if ((node & 1) === 0) rule.askNear(activity);
    else rule.askFar(activity);
    if (rule.bestS !== rule.timeS[node]) continue;
    rule.take(node);
    rule.grounded[node] = 1;
    found++;
  }
  return found;
}
