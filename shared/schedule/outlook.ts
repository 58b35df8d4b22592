import { must, seconds } from '../kernel/index.ts';
import { nodeOf } from './arcs-of-problem.ts';
import { DONE, RUNNING, WAITING } from './facts.ts';
import { type Live, latestForGoal } from './live.ts';
import { UNBOUND } from './live-net.ts';
import type { Goal } from './model.ts';
import { at } from './network.ts';
import type { GoalOutlook } from './timeline-types.ts';

/** How a goal stands: when it will be, and how much may still slip before it is late. */
export function goalOutlook(live: Live, goal: Goal): GoalOutlook {
  const { published, earliest } = live;
  const atS = at(earliest.rule.timeS, nodeOf(goal, published.index));
  const latestS = latestForGoal(live, goal);
  let least: { activity: number; spareS: number } | undefined;
  for (const activity of published.placements.keys()) {
    if (!isNext(live, activity)) continue;
    const spareS = spareOf(live, activity, latestS);
    if (spareS < -UNBOUND / 2 && !(least && least.spareS <= spareS)) least = { activity, spareS };
  }
  const aheadS = goal.dueS - atS;
  const inHandS = aheadS < 0 || !least ? aheadS : Math.max(0, least.spareS);
  return {
    goal: goal.id,
    dueS: goal.dueS,
    atS: seconds(atS),
    inHandS: seconds(inHandS),
    hangsOn: least ? must(published.placements[least.activity], 'placed').activity : null,
  };
}

/** Whether it runs, or waits for nothing that has not happened: what may slip now. */
function isNext({ facts, arcs }: Live, activity: number): boolean {
  const stage = facts.stage[activity];
  if (stage !== WAITING) return stage === RUNNING;
  for (const node of [activity * 2, activity * 2 + 1]) {
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
function spareOf({ facts, parts, earliest }: Live, activity: number, latestS: Int32Array): number {
  const { timeS } = earliest.rule;
  const [near, far] = [activity * 2, activity * 2 + 1];
  if (facts.stage[activity] === WAITING) return -at(latestS, far) - at(timeS, near);
  const isWait = parts.net.isWork[activity] === 0;
  const leastEndS = Math.max(at(facts.startS, activity) + at(facts.minS, activity), facts.nowS);
  return -at(latestS, near) - (isWait ? leastEndS : at(timeS, far));
}
