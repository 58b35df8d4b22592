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
  /**
   * The same by whole chains, where the list above is long: their goals, and whose hours. None
   * where not each of them was seen to be needed.
   */
  readonly chains: readonly Demand[];
  /** Without any one of them, a plan was found: none is left that has nothing to do with it. */
  readonly isSmallest: boolean;
  /** False where no more is known than that no plan was found that keeps them. */
  readonly isProven: boolean;
};

export type ConflictingOptions = {
  /** It asks the judge so often at the most. */
  readonly checksMost: number;
  /** Where it is likely to be found, what is likeliest first: what a planner found no room for. */
  readonly near?: readonly ActivityId[];
  readonly shouldStop?: () => boolean;
};

/**
 * The smallest set of things asked for that cannot all be kept; of whole chains first, then of what
 * these ask for. `undefined` if all of them can.
 */
export function conflicting(
  problem: Problem,
  judge: Judge,
  { checksMost, near = [], shouldStop }: ConflictingOptions,
): Conflicting | undefined {
  const chainOf = chainsOf(problem);
  let checks = 0;
  const judged = (demands: readonly Demand[]) => {
    const chains = new Set(demands.flatMap(activitiesOfDemand).map(chainOf));
    checks++;
    return judge(askingOnlyFor(problem, demands, (id) => chains.has(chainOf(id))));
  };
  const all = demandsOf(problem);
  if (near.length === 0 && judged(all) === 'can') return undefined;
  const isOver = () => checks >= checksMost || (shouldStop?.() ?? false);
  const cannot: Cannot<Demand> = (demands) => (isOver() ? undefined : judged(demands) !== 'can');
  const chains = grouped(all, chainOf);
  const some = nearest(chains, near, cannot) ?? chains;
  if (some === chains && near.length > 0 && judged(all) === 'can') return undefined;
  const few = smallest(some, (chosen) => cannot(chosen.flat()));
  const { left, isSmallest } = smallest(few.left.flat(), cannot);
  const isNamed = ({ kind }: Demand) => kind === 'goal' || kind === 'hours';
  return {
    demands: left,
    chains: few.isSmallest ? few.left.flat().filter(isNamed) : [],
    isSmallest,
    isProven: judged(left) === 'cannot',
  };
}

/**
 * The chains that are nearest to where it is likely to be found, twice as many each time, until
 * these alone cannot be; all hours are kept. Nothing where that is not found.
 */
function nearest(
  chains: readonly (readonly Demand[])[],
  near: readonly ActivityId[],
  cannot: Cannot<Demand>,
): readonly (readonly Demand[])[] | undefined {
  const rank = new Map(near.map((id, i) => [id, i]));
  const rankOf = (chain: readonly Demand[]) =>
    Math.min(...chain.flatMap(activitiesOfDemand).map((id) => rank.get(id) ?? near.length));
  const isHours = (chain: readonly Demand[]) => chain.every(({ kind }) => kind === 'hours');
  const hours = chains.filter(isHours);
  const inOrder = chains
    .filter((chain) => !isHours(chain))
    .toSorted((a, b) => rankOf(a) - rankOf(b));
  for (let count = 2; near.length > 0 && count < inOrder.length; count *= 2) {
    const some = [...inOrder.slice(0, count), ...hours];
    if (cannot(some.flat())) return some;
  }
  return undefined;
}

/**
 * The number of the goal that is fewest lags away from an activity; what no goal is tied to goes by
 * its own chain of lags. What one batch leaves for another ties the two: they are two all the same.
 */
function chainsOf(problem: Problem): (id: ActivityId) => number {
  const index = indexOf(problem);
  const size = problem.activities.length;
  const beside: number[][] = problem.activities.map(() => []);
  for (const { from, to } of problem.lags) {
    const [a, b] = [index.activity(from.activity), index.activity(to.activity)];
    beside[a]?.push(b);
    beside[b]?.push(a);
  }
  const goalOf = new Int32Array(size).fill(-1);
  const reached: number[] = [];
  const reach = (activity: number, goal: number) => {
    if (at(goalOf, activity) >= 0) return;
    goalOf[activity] = goal;
    reached.push(activity);
  };
  for (const [goal, { activity }] of problem.goals.entries()) reach(index.activity(activity), goal);
  for (const one of reached) for (const other of beside[one] ?? []) reach(other, at(goalOf, one));
  const { tieOf } = tiesOf(arcsOf(lagArcs(problem, index), size * 2), size);
  const alone = (activity: number) => problem.goals.length + at(tieOf, activity);
  return (id) => {
    const activity = index.activity(id);
    return at(goalOf, activity) < 0 ? alone(activity) : at(goalOf, activity);
  };
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
