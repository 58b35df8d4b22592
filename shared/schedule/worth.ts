import { must, type Seconds, seconds } from '../kernel/index.ts';
import { nodeOf } from './arcs-of-problem.ts';
import { goalBound } from './goal-bound.ts';
import { type Index, indexOf } from './index-of.ts';
import type { Mode, Placement, Problem, Schedule } from './model.ts';
import { at, endOf } from './network.ts';
import { changeTimeS } from './state-change.ts';
import { temporalNet } from './temporal.ts';
import { GIVEN, Windows } from './windows.ts';

/**
 * How good a schedule is: the less the better, an earlier line before all later ones.
 */
export type Worth = {
  /** Seconds that goals are late, each times its weight. */
  readonly lateS: Seconds;
  /** Seconds that waits are shorter than they aim to be. */
  readonly shortS: Seconds;
  /**
   * How long before its goal each activity ends, times the goal's weight, in sum: what is ready
   * early stands about. What no goal waits for is not counted.
   */
  readonly aheadS: Seconds;
  /** Seconds that state resources take to change from one activity to the next. */
  readonly changesS: Seconds;
};

const LINES = ['lateS', 'shortS', 'aheadS', 'changesS'] as const;

/** Below nought where the first is better. */
export function compareWorth(a: Worth, b: Worth): number {
  const line = LINES.find((each) => a[each] !== b[each]);
  return line === undefined ? 0 : a[line] - b[line];
}

/** What the activities of a problem are measured by. */
export type Measure = {
  /** By activity: the weight of the goal that waits for it; 0 for none. */
  readonly weights: Float64Array;
  /** By activity: when the goal that is nearest to it is due. */
  readonly dueS: Int32Array;
};

/** The goal that each activity is pressed by, as lags and least lengths alone have it. */
export function measureOf(problem: Problem): Measure {
  const index = indexOf(problem);
  const size = problem.activities.length;
  const net = temporalNet(problem, { aim: 0, lateS: problem.goals.map(() => 0) });
  const { hiS, hiBy } = Windows.of(net.arcs, net.loS, net.hiS);
  const weightAt = new Map<number, number>();
  for (const goal of problem.goals) {
    const node = nodeOf(goal, index);
    weightAt.set(node, Math.max(goal.weight, weightAt.get(node) ?? 0));
  }
  const bound = goalBound(net);
  const weights = new Float64Array(size);
  const dueS = new Int32Array(size);
  for (const activity of bound) {
    let node = endOf(activity);
    while (at(hiBy, node) !== GIVEN) node = at(net.arcs.to, at(hiBy, node));
    if (problem.activities[activity]?.pin?.endS !== undefined) continue;
    if (net.dated[node] === 0) continue;
    weights[activity] = weightAt.get(node) ?? 1;
    dueS[activity] = at(hiS, node);
  }
  return { weights, dueS };
}

/** How good a schedule of a problem is. */
export function worthOf(problem: Problem, schedule: Schedule, measure = measureOf(problem)): Worth {
  const index = indexOf(problem);
  const placed = new Map(schedule.placements.map((each) => [each.activity, each]));
  const lateS = problem.goals.reduce((sum, { activity, end, dueS, weight }) => {
    const its = must(placed.get(activity), activity);
    return sum + weight * Math.max(0, (end === 'start' ? its.startS : its.endS) - dueS);
  }, 0);
  let shortS = 0;
  let aheadS = 0;
  for (const placement of schedule.placements) {
    const activity = index.activity(placement.activity);
    const { length } = modeOf(problem, index, placement);
    if (length.kind === 'wait' && !problem.activities[activity]?.pin) {
      const lengthS = placement.endS - placement.startS;
      shortS += Math.max(0, (length.aimS ?? length.minS) - lengthS);
    }
    aheadS += at(measure.weights, activity) * (at(measure.dueS, activity) - placement.endS);
  }
  const changesS = changesOf(problem, index, schedule.placements);
  return {
    lateS: seconds(Math.round(lateS)),
    shortS: seconds(shortS),
    aheadS: seconds(Math.round(aheadS)),
    changesS: seconds(changesS),
  };
}

function changesOf(problem: Problem, index: Index, placements: readonly Placement[]): number {
  const needs = placements
    .flatMap((placement) =>
      modeOf(problem, index, placement).states.map((need) => ({ ...need, placement })),
    )
    .sort((a, b) => a.placement.startS - b.placement.startS || a.placement.endS - b.placement.endS);
  const stateOf = new Map<string, string>();
  let sumS = 0;
  for (const { resource, state } of needs) {
    const its = problem.resources[index.resource(resource)];
    const before = stateOf.get(resource);
    if (its?.kind === 'state' && before !== undefined) sumS += changeTimeS(its, before, state);
    stateOf.set(resource, state);
  }
  return sumS;
}

function modeOf(problem: Problem, index: Index, { activity, mode }: Placement): Mode {
  const modes = problem.activities[index.activity(activity)]?.modes;
  return must(
    modes?.find(({ id }) => id === mode),
    mode,
  );
}
