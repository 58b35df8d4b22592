import type { Facts } from './facts.ts';
import { DONE, WAITING } from './facts.ts';
import type { LiveNet } from './live-net.ts';
import { at } from './network.ts';

/**
 * Finds the activities that were started on units which others still hold: the hand that began the
 * next task while the one before is not done, the piece put in beside one that should be out.
 * Whoever is to have the units next must then wait for all of them.
 */
export function sharedUnits(net: LiveNet, facts: Facts): Uint8Array {
  const shared = new Uint8Array(net.size);
  for (const activity of net.order)
    shared[activity] = isShared(activity, net, facts, shared) ? 1 : 0;
  return shared;
}

/** Looks again after an activity has started or finished; tells of each that is another now. */
export function lookAgain(
  activity: number,
  net: LiveNet,
  facts: Facts,
  shared: Uint8Array,
  tell: (activity: number) => void,
): void {
  const is = isShared(activity, net, facts, shared) ? 1 : 0;
  if (is !== shared[activity]) tell(activity);
  shared[activity] = is;
  for (const next of linkedTo(net, activity)) {
    if (facts.stage[next] === WAITING) continue;
    if ((isShared(next, net, facts, shared) ? 1 : 0) === shared[next]) continue;
    lookAgain(next, net, facts, shared, tell);
  }
}

function isShared(activity: number, net: LiveNet, facts: Facts, shared: Uint8Array): boolean {
  if (facts.stage[activity] === WAITING) return false;
  return linkedFrom(net, activity).some(
    (before) => facts.stage[before] !== DONE || shared[before] === 1,
  );
}

/** Who hands units on to an activity. */
export function linkedFrom({ arcs }: LiveNet, activity: number): number[] {
  const near = activity * 2;
  const found: number[] = [];
  for (let i = at(arcs.into.first, near); i < at(arcs.into.first, near + 1); i++) {
    const arc = at(arcs.into.items, i);
    if (at(arcs.handsOn, arc) >= 0) found.push(at(arcs.from, arc) >> 1);
  }
  return found;
}

/** Whom an activity hands units on to. */
export function linkedTo({ arcs }: LiveNet, activity: number): number[] {
  const far = activity * 2 + 1;
  const found: number[] = [];
  for (let i = at(arcs.out.first, far); i < at(arcs.out.first, far + 1); i++) {
    const arc = at(arcs.out.items, i);
    if (at(arcs.handsOn, arc) >= 0) found.push(at(arcs.to, arc) >> 1);
  }
  return found;
}
