import type { ActivityId } from '../kernel/index.ts';
import { must, seconds } from '../kernel/index.ts';
import { compile } from './compile.ts';
import type { Failure } from './generated.ts';
import { indexOf } from './index-of.ts';
import type { Conflict, Problem } from './model.ts';
import { activityOf, at, endOf, startOf } from './network.ts';
import { precedenceOf } from './precedence.ts';
import { search } from './search.ts';
import { GIVEN, Windows } from './windows.ts';

/** How near a shortfall is measured. */
const PRECISION_S = 60;
/** Attempts at each lateness that is tried. */
const ATTEMPTS = 3;

/**
 * Why no schedule was found: which activity finds no room, and, where letting a goal come later
 * helps, which goal is short by how much. These amounts are what this planner would need; they are
 * no proof that a better one could not do with less.
 */
export function refuse(problem: Problem, failure: Failure, seed: number): Conflict[] {
  const goals = goalsAfter(problem, failure.activity);
  const alone = goals.flatMap((goal) => {
    const shortS = shortfall(problem, [goal], seed);
    return shortS === undefined ? [] : [{ goal, shortS }];
  });
  const least = alone.sort((a, b) => a.shortS - b.shortS)[0];
  if (least) return [tooEarly(problem, failure, least), noRoom(problem, failure)];
  const together = goals.length > 1 ? shortfall(problem, goals, seed) : undefined;
  if (together === undefined) return [noRoom(problem, failure)];
  const late = goals.map((goal) => tooEarly(problem, failure, { goal, shortS: together }));
  return [...late, noRoom(problem, failure)];
}

/** The goals that wait for an activity, by their place in the problem. */
function goalsAfter(problem: Problem, activity: number): number[] {
  const net = compile(problem, { aim: 0, lateS: problem.goals.map(() => 0) });
  const { after } = precedenceOf(
    net,
    net.modes.map((_, i) => at(net.loS, startOf(i))),
  );
  const reached = new Set([activity]);
  for (const each of reached) for (const next of after[each] ?? []) reached.add(next);
  const index = indexOf(problem);
  return problem.goals.flatMap((goal, i) =>
    reached.has(index.activity(goal.activity)) ? [i] : [],
  );
}

/** The least lateness of these goals with which a schedule is found, to the minute. */
function shortfall(problem: Problem, goals: readonly number[], seed: number): number | undefined {
  const holds = (byS: number) => {
    const lateS = problem.goals.map((_, goal) => (goals.includes(goal) ? byS : 0));
    return search(problem, { seed, lateS, attempts: ATTEMPTS }).ok;
  };
  const latestS = PRECISION_S * Math.ceil(problem.horizonS / PRECISION_S);
  if (!holds(latestS)) return undefined;
  let tooLittleS = 0;
  let enoughS = PRECISION_S;
  while (enoughS < latestS && !holds(enoughS)) {
    tooLittleS = enoughS;
    enoughS *= 2;
  }
  while (enoughS - tooLittleS > PRECISION_S) {
    const middleS = PRECISION_S * Math.round((tooLittleS + enoughS) / 2 / PRECISION_S);
    if (holds(middleS)) enoughS = middleS;
    else tooLittleS = middleS;
  }
  return enoughS;
}

type Short = { readonly goal: number; readonly shortS: number };

function tooEarly(problem: Problem, { activity }: Failure, { goal, shortS }: Short): Conflict {
  return {
    kind: 'goal-too-early',
    goal: must(problem.goals[goal], 'a goal').id,
    shortS: seconds(shortS),
    chain: chainThrough(problem, activity),
  };
}

/**
 * The longest chain of lags that leads to an activity, and on from it to what it must not delay.
 */
function chainThrough(problem: Problem, activity: number): ActivityId[] {
  const net = compile(problem, { aim: 0, lateS: problem.goals.map(() => 0) });
  const windows = Windows.of(net.arcs, net.loS, net.hiS);
  const before = trace(windows.loBy, net.arcs.from, startOf(activity)).reverse();
  const after = trace(windows.hiBy, net.arcs.to, endOf(activity));
  const numbers = [...before, ...after].map(activityOf);
  return [...new Set(numbers)].map((i) => must(problem.activities[i], 'an activity').id);
}

function trace(by: Int32Array, next: Int32Array, from: number): number[] {
  const nodes = [from];
  for (let node = from; at(by, node) !== GIVEN; nodes.push(node)) node = at(next, at(by, node));
  return nodes;
}

/** What found no room, within what and beside whom. */
export function noRoom(problem: Problem, failure: Failure): Conflict {
  const activity = must(problem.activities[failure.activity], 'an activity');
  const mode = must(activity.modes[failure.mode.index], activity.id);
  const need = mode.needs[failure.need ?? 0];
  const state = mode.states[0];
  return {
    kind: 'no-room',
    activity: activity.id,
    role: failure.need === undefined && state ? state.state : (need?.role ?? ''),
    resources: failure.need === undefined && state ? [state.resource] : (need?.oneOf ?? []),
    window: {
      start: seconds(failure.window.startLoS),
      end: seconds(failure.window.endHiS),
    },
    shortS: seconds(failure.shortS ?? problem.horizonS),
    blockedBy: failure.blockers.map((i) => must(problem.activities[i], 'an activity').id),
  };
}
