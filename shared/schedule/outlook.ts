import { must, seconds } from '../kernel/index.ts';
import { nodeOf } from './arcs-of-problem.ts';
import { NOWHERE } from './by.ts';
import { DONE, RUNNING, WAITING } from './facts.ts';
import { latestForGoals, type Standing } from './live.ts';
import { UNBOUND } from './live-net.ts';
import type { Goal } from './model.ts';
import { activityOf, at, endOf, startOf } from './network.ts';
import type { Rule } from './rule.ts';
import type { GoalOutlook, InHand } from './timeline-types.ts';

/** How a goal stands: when it will be, and how much may still slip before it is late. */
export function goalOutlook(live: Standing, goal: Goal): GoalOutlook {
  const inHand = inHandOf(live, [goal]);
  return { dueS: goal.dueS, atS: seconds(goal.dueS - aheadS(live, goal)), ...inHand };
}

/**
 * How much may still slip before any of some goals is late: one pass for all of them, since what
 * is late for the first of them is late for all. Needs at least one goal.
 */
export function inHandOf(live: Standing, goals: readonly Goal[]): InHand {
  const { placements } = live.published;
  const latest = goals.reduce((a, b) => (aheadS(live, b) < aheadS(live, a) ? b : a));
  const leastAheadS = aheadS(live, latest);
  const isLate = leastAheadS < 0;
  // Once one will be late, it is said of that one by how much, and what it hangs on.
  const rule = latestForGoals(live, isLate ? [latest] : goals);
  let least: { activity: number; spareS: number } | undefined;
  for (const activity of placements.keys()) {
    const spareS = spareOf(live, activity, rule.timeS);
    if (spareS >= -UNBOUND / 2 || (least && least.spareS <= spareS)) continue;
    if (isNext(live, activity)) least = { activity, spareS };
  }
  return {
    inHandS: seconds(isLate || !least ? leastAheadS : Math.max(0, least.spareS)),
    hangsOn: least ? must(placements[least.activity], 'placed').activity : null,
    goal: (least ? boundBy(live, goals, least.activity, rule) : latest).id,
  };
}

/** The goal that an activity's latest times come from. */
function boundBy(live: Standing, goals: readonly Goal[], activity: number, { source }: Rule): Goal {
  const isAhead = live.facts.stage[activity] === WAITING;
  let node = isAhead ? endOf(activity) : startOf(activity);
  // Times that are equal may hang on each other: no chain is longer than there are nodes.
  for (let step = 0; step < source.length && at(source, node) !== NOWHERE; step++) {
    node = at(source, node);
  }
  const { index } = live.published;
  const isIt = (goal: Goal) => activityOf(nodeOf(goal, index)) === activityOf(node);
  return must(goals.find(isIt) ?? goals[0], 'a goal');
}

function aheadS({ published, earliest }: Standing, goal: Goal): number {
  return goal.dueS - at(earliest.rule.timeS, nodeOf(goal, published.index));
}

/** Whether it runs, or waits for nothing that has not happened: what may slip now. */
function isNext({ facts, arcs, parts }: Standing, activity: number): boolean {
  const stage = facts.stage[activity];
  if (stage !== WAITING) return stage === RUNNING;
  const [near, far] = [activity * 2, activity * 2 + 1];
  // What holds the end of a wait does not hold its start: it is drawn out meanwhile.
  for (const node of parts.net.isWork[activity] === 1 ? [near, far] : [near]) {
    for (let arc = at(arcs.firstInto, node); arc >= 0; arc = at(arcs.nextInto, arc)) {
      if (arcs.back[arc] === 1 || arcs.off[arc] === 1) continue;
      const from = at(arcs.from, arc);
      const stageAsked = (from & 1) === 0 ? RUNNING : DONE;
      if (at(facts.stage, from >> 1) < stageAsked) return false;
    }
  }
  return true;
}

/** How much later it can be; a wait that runs can be cut short, but to its least. */
function spareOf(
  { facts, parts, earliest }: Standing,
  activity: number,
  latestS: Int32Array,
): number {
  const { timeS } = earliest.rule;
  const [near, far] = [activity * 2, activity * 2 + 1];
  if (facts.stage[activity] === WAITING) return -at(latestS, far) - at(timeS, near);
  const isWait = parts.net.isWork[activity] === 0;
  const leastEndS = Math.max(at(facts.startS, activity) + at(facts.minS, activity), facts.nowS);
  return -at(latestS, near) - (isWait ? leastEndS : at(timeS, far));
}
