import { pickBelow, type Random } from '../../kernel/index.ts';
import type { Net, Slot } from '../net.ts';
import { activityOf, at, endOf, grouped, startOf } from '../network.ts';
import { Windows } from '../windows.ts';

/** No more than so many activities are taken off at a time, so that one step stays quick. */
const MOST = 40;
/** The longest stretch of time that is taken off at once. */
const STRETCH_S = 4 * 3_600;
/** So many chains at most are taken off together. */
const CHAINS_MOST = 4;
/** Of so many drawn by chance, what is kept longest from when it could be is begun with. */
const DRAWN = 3;

/** Whom to take off, so that what is put back in another order may come to lie better. */
export type Neighbourhoods = (random: Random, slots: readonly Slot[]) => Set<number>;

/**
 * Neighbourhoods of a schedule: the chains before a few activities that share a resource, all that
 * is on one resource for a while, or one chain alone (after P. Shaw, CP 1998; D. Godard, P. Laborie
 * and W. Nuijten, ICAPS 2005). Only `movable` ones are taken off.
 */
export function neighbourhoodsOf(net: Net, movable: readonly number[]): Neighbourhoods {
  const { loS } = Windows.of(net.arcs, net.loS, net.hiS);
  const keptS = (activity: number, slots: readonly Slot[]) =>
    (slots[activity]?.startS ?? 0) - at(loS, startOf(activity));
  const isMovable = new Uint8Array(net.size);
  for (const activity of movable) isMovable[activity] = 1;
  const usersOf = usersByResource(net, movable);
  const some = (random: Random, slots: readonly Slot[]) => {
    const drawn = Array.from({ length: DRAWN }, () =>
      at(movable, pickBelow(random, movable.length)),
    );
    return drawn.reduce((a, b) => (keptS(b, slots) > keptS(a, slots) ? b : a));
  };
  const together = (random: Random, slots: readonly Slot[]) => {
    const first = some(random, slots);
    const taken = chainOf(net, first);
    const mates = matesOf(first, slots, usersOf, random);
    for (
      let chains = 1 + pickBelow(random, CHAINS_MOST);
      chains > 1 && mates.length > 0;
      chains--
    ) {
      const mate = at(mates, pickBelow(random, mates.length));
      for (const activity of chainOf(net, mate)) taken.add(activity);
      if (taken.size >= MOST) break;
    }
    return taken;
  };
  const aWhile = (random: Random, slots: readonly Slot[]) => {
    const first = some(random, slots);
    const halfS = random() * STRETCH_S;
    const aboutS = slots[first]?.startS ?? 0;
    const isNear = (activity: number) => Math.abs((slots[activity]?.startS ?? 0) - aboutS) < halfS;
    const near = matesOf(first, slots, usersOf, random).filter(isNear);
    return new Set([first, ...near.slice(0, MOST)]);
  };
  return (random, slots) => {
    const kind = pickBelow(random, 4);
    const taken = kind === 0 ? aWhile(random, slots) : together(random, slots);
    return new Set([...taken].filter((activity) => isMovable[activity] === 1));
  };
}

/** Who might use each resource: a need asks for it, or a state. */
function usersByResource({ modes, resources }: Net, movable: readonly number[]) {
  const pairs = movable.flatMap((activity) => {
    const its = (modes[activity] ?? []).flatMap(({ needs, states }) => [
      ...needs.flatMap((need) => need.resources),
      ...states.map(({ resource }) => resource),
    ]);
    return [...new Set(its)].map((resource) => ({ activity, resource }));
  });
  const groups = grouped(
    pairs.map(({ resource }) => resource),
    resources.length,
  );
  return resources.map((_, resource) => {
    const users: number[] = [];
    for (let i = at(groups.first, resource); i < at(groups.first, resource + 1); i++) {
      users.push(pairs[at(groups.items, i)]?.activity ?? 0);
    }
    return users;
  });
}

/** Who might use one of the resources that an activity is on. */
function matesOf(
  activity: number,
  slots: readonly Slot[],
  usersOf: readonly (readonly number[])[],
  random: Random,
): readonly number[] {
  const slot = slots[activity];
  const on = [...(slot?.uses ?? []), ...(slot?.mode.states.map(({ resource }) => resource) ?? [])];
  if (on.length === 0) return [];
  return usersOf[at(on, pickBelow(random, on.length))] ?? [];
}

/**
 * What hangs together with an activity by lags that have a most, and so can only move together; the
 * nearest first.
 */
function chainOf({ arcs }: Net, activity: number): Set<number> {
  const chain = new Set([activity]);
  for (const each of chain) {
    if (chain.size >= MOST) break;
    for (const node of [startOf(each), endOf(each)]) {
      for (let i = at(arcs.out.first, node); i < at(arcs.out.first, node + 1); i++) {
        chain.add(activityOf(at(arcs.to, at(arcs.out.items, i))));
      }
      for (let i = at(arcs.into.first, node); i < at(arcs.into.first, node + 1); i++) {
        chain.add(activityOf(at(arcs.from, at(arcs.into.items, i))));
      }
    }
  }
  return chain;
}
