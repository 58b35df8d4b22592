import { must, seconds } from '../kernel/index.ts';
import { lagArcs, lengthArcs } from './arcs-of-problem.ts';
import { clashOrder } from './chain-clashes.ts';
import { stateOrder } from './chain-states.ts';
import { type Precedes, Tails } from './chain-tails.ts';
import { Closure } from './closure.ts';
import { indexOf } from './index-of.ts';
import type { Link, Placement, Problem } from './model.ts';
import { arcsOf } from './network.ts';
import { precedenceOf } from './precedence.ts';
import { type Sharing, sharingsOf } from './sharing.ts';
import { inTurn, type Turn } from './turn.ts';

/**
 * The partial order that a schedule's use of resources makes (Policella, Smith, Cesta and Oddi,
 * ICAPS 2004; Journal of Scheduling 12, 2009): each unit goes from one user to the next, and where
 * there is a choice, along an order that the lags make anyway, and in as few links as can be. With
 * the links kept, any times that keep the lags keep every resource. A link along a lag is told all
 * the same: people begin things out of turn, and then the units still go from hand to hand.
 *
 * Placements that overlap where they should not are put in the order of their starts.
 */
export function chain(problem: Problem, placements: readonly Placement[]): Link[] {
  const index = indexOf(problem);
  const size = problem.activities.length;
  const lengths = problem.activities.flatMap((_, activity) => lengthArcs(activity, 0, 0));
  const arcs = arcsOf(
    [...lagArcs(problem, index), ...lengths.filter(({ back }) => !back)],
    size * 2,
  );
  const [startS, endS] = [new Int32Array(size), new Int32Array(size)];
  for (const placement of placements) {
    startS[index.activity(placement.activity)] = placement.startS;
    endS[index.activity(placement.activity)] = placement.endS;
  }
  const turn = { startS, endS, rank: precedenceOf({ arcs, size }, startS).rank };
  const sharings = sharingsOf(problem, index, placements);
  const idOf = (activity: number) => must(problem.activities[activity], 'an activity').id;
  return [
    ...chainUnits(sharings, turn, new Closure(arcs, size), idOf),
    ...sharings.flatMap((each) => (each.kind === 'capacity' ? [] : orderOn(each, turn, idOf))),
  ];
}

type IdOf = (activity: number) => Link['from'];

/** All units at once, user by user, so that each sees the order the others have made. */
function chainUnits(sharings: readonly Sharing[], turn: Turn, closure: Closure, idOf: IdOf) {
  const precedes: Precedes = (first, second) => closure.precedes(first, second);
  const asked = sharings.flatMap((each) => {
    if (each.kind !== 'capacity') return [];
    const tails = new Tails(each.resource.capacity, turn, precedes);
    return each.users.map((user) => ({ ...user, tails, resource: each.resource.id }));
  });
  return inTurn(asked, turn).flatMap(({ activity, amount, tails, resource }) =>
    tails.pass(activity, amount).map((from): Link => {
      closure.link(from, activity);
      return { from: idOf(from), to: idOf(activity), resource, gapS: seconds(0) };
    }),
  );
}

/** The order on one thing that is shared, made by the turn alone. */
export function orderOn(sharing: Sharing, turn: Turn, idOf: IdOf): Link[] {
  if (sharing.kind === 'clash') return clashOrder(sharing, turn);
  const resource = sharing.resource.id;
  if (sharing.kind === 'state') {
    return stateOrder(sharing, turn).map(({ from, to, gapS }) => ({
      from: idOf(from),
      to: idOf(to),
      resource,
      gapS,
    }));
  }
  const tails = new Tails(sharing.resource.capacity, turn, () => false);
  return inTurn(sharing.users, turn).flatMap(({ activity, amount }) =>
    tails.pass(activity, amount).map((from) => ({
      from: idOf(from),
      to: idOf(activity),
      resource,
      gapS: seconds(0),
    })),
  );
}
