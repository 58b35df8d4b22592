import type { ActivityId } from '../../kernel/index.ts';
import { lagArcs } from '../arcs-of-problem.ts';
import { indexOf } from '../index-of.ts';
import type { Problem } from '../model.ts';
import { arcsOf, at } from '../network.ts';
import { tiesOf } from '../ties.ts';
import { activitiesOfDemand, askingOnlyFor, type Demand, demandsOf } from './demands.ts';
import { type Cannot, smallest } from './smallest.ts';

/** Whether a problem can be: asked of a planner, or of something that proves. */
export type Judge = (problem: Problem) => 'can' | 'cannot' | 'no-plan-found';

export type Conflicting = {
  /** These cannot all be kept, whatever else is asked for or not. */
  readonly demands: readonly Demand[];
  /** Without any one of them, a plan was found: none is left that has nothing to do with it. */
  readonly isSmallest: boolean;
  /** False where no more is known than that no plan was found that keeps them. */
  readonly isProven: boolean;
};

export type ConflictingOptions = {
  /** It asks the judge so often at the most. */
  readonly checksMost: number;
  readonly shouldStop?: () => boolean;
};

/**
 * The smallest set of things asked for that cannot all be kept; of whole chains first, then of what
 * these ask for. `undefined` if all of them can.
 */
export function conflicting(
  problem: Problem,
  judge: Judge,
  { checksMost, shouldStop }: ConflictingOptions,
): Conflicting | undefined {
  const chainOf = chainsOf(problem);
  let checks = 0;
  const judged = (demands: readonly Demand[]) => {
    const chains = new Set(demands.flatMap(activitiesOfDemand).map(chainOf));
    checks++;
    return judge(askingOnlyFor(problem, demands, (id) => chains.has(chainOf(id))));
  };
  const all = demandsOf(problem);
  if (judged(all) === 'can') return undefined;
  const isOver = () => checks >= checksMost || (shouldStop?.() ?? false);
  const cannot: Cannot<Demand> = (demands) => (isOver() ? undefined : judged(demands) !== 'can');
  const chains = grouped(all, chainOf);
  const few = smallest(chains, (some) => cannot(some.flat()));
  const { left, isSmallest } = smallest(few.left.flat(), cannot);
  return { demands: left, isSmallest, isProven: judged(left) === 'cannot' };
}

/** The number of the chain of lags that an activity is in. */
function chainsOf(problem: Problem): (id: ActivityId) => number {
  const index = indexOf(problem);
  const size = problem.activities.length;
  const { tieOf } = tiesOf(arcsOf(lagArcs(problem, index), size * 2), size);
  return (id) => at(tieOf, index.activity(id));
}

/** What is asked of each chain; hours each by themselves. */
function grouped(demands: readonly Demand[], chainOf: (id: ActivityId) => number): Demand[][] {
  const chains = new Map<number, Demand[]>();
  const alone: Demand[][] = [];
  for (const demand of demands) {
    const [activity] = activitiesOfDemand(demand);
    if (activity === undefined) alone.push([demand]);
    else chains.set(chainOf(activity), [...(chains.get(chainOf(activity)) ?? []), demand]);
  }
  return [...chains.values(), ...alone];
}
