import type { ActivityId } from '../kernel/index.ts';
import { must, seconds } from '../kernel/index.ts';
import { nodeOf } from './arcs-of-problem.ts';
import { indexOf } from './index-of.ts';
import { longestPaths } from './longest-paths.ts';
import type { Conflict, Goal, Problem } from './model.ts';
import { activityOf, at } from './network.ts';
import { temporalNet } from './temporal.ts';
import { GIVEN } from './windows.ts';

/**
 * Times that cannot all hold whatever the resources: lags that go round in a circle, and goals,
 * deadlines and pins that are too early for the chain before them.
 */
export function untimely(problem: Problem): Conflict[] {
  const net = temporalNet(problem, { aim: 0, lateS: problem.goals.map(() => 0) });
  const paths = longestPaths(net.arcs, net.loS);
  const named = (nodes: readonly number[]) => [
    ...new Set(nodes.map((node) => must(problem.activities[activityOf(node)], 'activity').id)),
  ];
  if (!paths.ok) {
    const { cycle, excessS } = paths;
    return [{ kind: 'lags-contradict', activities: named(cycle), excessS: seconds(excessS) }];
  }
  const { timeS, by } = paths;
  const chainTo = (node: number): ActivityId[] => {
    const nodes = [node];
    for (let last = node; at(by, last) !== GIVEN; nodes.push(last)) {
      last = at(net.arcs.from, at(by, last));
    }
    return named(nodes.reverse());
  };
  const goals = tooEarlyGoals(problem, timeS, chainTo);
  if (goals.length > 0) return goals;
  const late = timeS.findIndex((s, node) => s > at(net.hiS, node));
  if (late < 0) return [];
  const excessS = seconds(at(timeS, late) - at(net.hiS, late));
  return [{ kind: 'lags-contradict', activities: chainTo(late), excessS }];
}

function tooEarlyGoals(
  problem: Problem,
  timeS: Int32Array,
  chainTo: (node: number) => ActivityId[],
): Conflict[] {
  const index = indexOf(problem);
  return problem.goals.flatMap((goal: Goal): Conflict[] => {
    const node = nodeOf(goal, index);
    const shortS = at(timeS, node) - goal.dueS;
    if (shortS <= 0) return [];
    return [
      { kind: 'goal-too-early', goal: goal.id, shortS: seconds(shortS), chain: chainTo(node) },
    ];
  });
}
