import { must, seconds } from '../kernel/index.ts';
import { lagArcs, lengthArcs } from './arcs-of-problem.ts';
import { clashLinks } from './chain-clashes.ts';
import type { Placed } from './chain-placed.ts';
import { stateLinks } from './chain-states.ts';
import { Tails } from './chain-tails.ts';
import { Closure } from './closure.ts';
import { indexOf } from './index-of.ts';
import type { Link, Placement, Problem } from './model.ts';
import { arcsOf, at } from './network.ts';
import { precedenceOf } from './precedence.ts';

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
  const starts = new Int32Array(size);
  for (const { activity, startS } of placements) starts[index.activity(activity)] = startS;
  const { rank } = precedenceOf({ arcs, size }, starts);
  const placed = placements.map((placement): Placed => {
    const number = index.activity(placement.activity);
    const { modes } = must(problem.activities[number], placement.activity);
    const mode = modes.find(({ id }) => id === placement.mode);
    return { number, placement, mode: must(mode, placement.mode), rank: at(rank, number) };
  });
  const inOrder = placed.sort(
    (a, b) =>
      a.placement.startS - b.placement.startS ||
      a.placement.endS - b.placement.endS ||
      a.rank - b.rank,
  );
  const closure = new Closure(arcs, size);
  return [
    ...capacityLinks(problem, inOrder, closure),
    ...stateLinks(problem, inOrder),
    ...clashLinks(problem, inOrder),
  ];
}

function capacityLinks(problem: Problem, placed: readonly Placed[], closure: Closure): Link[] {
  const tails = new Map(
    problem.resources.flatMap((resource) =>
      resource.kind === 'capacity' ? [[resource.id, new Tails(resource.capacity, closure)]] : [],
    ),
  );
  return placed.flatMap((user) => {
    const asked = new Map<Link['resource'], number>();
    for (const { need, resource } of user.placement.uses) {
      const amount = user.mode.needs[need]?.amount ?? 0;
      asked.set(resource, (asked.get(resource) ?? 0) + amount);
    }
    return [...asked].flatMap(([resource, amount]) =>
      must(tails.get(resource), resource)
        .pass(user, amount)
        .map(({ placement }) => ({
          from: placement.activity,
          to: user.placement.activity,
          resource,
          gapS: seconds(0),
        })),
    );
  });
}
