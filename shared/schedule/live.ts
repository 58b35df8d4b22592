import { nodeOf } from './arcs-of-problem.ts';
import type { Facts } from './facts.ts';
import { Floors } from './floors.ts';
import { rise } from './from-scratch.ts';
import { Labels } from './labels.ts';
import type { LiveArcs } from './live-arcs.ts';
import { UNBOUND } from './live-net.ts';
import { type LiveParts, liveNetOf } from './live-net-of.ts';
import type { Goal } from './model.ts';
import { activityOf, at, endOf, otherEnd, startOf } from './network.ts';
import type { Published } from './published.ts';
import { Rule } from './rule.ts';
import { Turns } from './turns.ts';

/** A published schedule together with what has happened, and all times that follow from both. */
export type Live = {
  readonly published: Published;
  readonly parts: LiveParts;
  readonly facts: Facts;
  readonly arcs: LiveArcs;
  readonly turns: Turns;
  readonly floors: Floors;
  readonly earliest: Labels;
  readonly latest: Labels;
};

/** So much of it as says when everything will be at the earliest. */
export type Standing = Pick<Live, 'published' | 'parts' | 'facts' | 'arcs'> & {
  readonly earliest: { readonly rule: Rule };
};

/** Facing backward, the plan asks nothing. */
const NO_FLOORS = new Int32Array();

/** Works out all times of a published schedule, given what has happened. */
export function liveFrom(published: Published, facts: Facts): Live {
  const parts = liveNetOf(published);
  const arcs = parts.arcs.copy();
  const turns = Turns.of(published, facts, arcs);
  const floors = new Floors(parts.net, facts);
  const forward = new Rule(parts.net, { arcs, facts, floorS: floors.floorS });
  const backward = new Rule(parts.backward, { arcs, facts, floorS: NO_FLOORS });
  const earliest = Labels.from(forward);
  return { published, parts, facts, arcs, turns, floors, earliest, latest: Labels.from(backward) };
}

/** A copy that can change by itself; what never changes is common to both. */
export function copyOf(live: Live): Live {
  const { parts } = live;
  const facts = live.facts.copy();
  const arcs = live.arcs.copy();
  const floors = live.floors.copy(facts);
  const forward = new Rule(parts.net, { arcs, facts, floorS: floors.floorS });
  const backward = new Rule(parts.backward, { arcs, facts, floorS: NO_FLOORS });
  return {
    ...live,
    facts,
    arcs,
    turns: live.turns.copy(facts, arcs),
    floors,
    earliest: live.earliest.copy(forward),
    latest: live.latest.copy(backward),
  };
}

/**
 * The latest times on account of some goals alone: by node of the mirrored net, and negated; far
 * below nought where none of them waits. Maximum lags are not heeded: they make nothing late.
 */
export function latestForGoals(live: Omit<Standing, 'earliest'>, goals: readonly Goal[]): Rule {
  const { published, parts, arcs, facts } = live;
  const hardS = new Int32Array(facts.stage.length * 2).fill(UNBOUND);
  const nodes = goals.map((goal) => nodeOf(goal, published.index));
  goals.forEach(({ dueS }, i) => {
    const mirrored = otherEnd(at(nodes, i));
    hardS[mirrored] = Math.max(at(hardS, mirrored), -dueS);
  });
  const net = { ...parts.backward, hardS };
  const rule = new Rule(net, { arcs, facts, floorS: NO_FLOORS, heedsMaxima: false });
  rise(rule, before(live, nodes));
  return rule;
}

/** What goals may wait for, with themselves, from them backward: nobody else hears of them. */
function before(
  { parts, arcs }: Pick<Standing, 'parts' | 'arcs'>,
  goals: readonly number[],
): number[] {
  const isIt = new Uint8Array(parts.net.size);
  const reached = [...new Set(goals.map(activityOf))];
  for (const one of reached) isIt[one] = 1;
  for (const one of reached) {
    for (const node of [startOf(one), endOf(one)]) {
      for (let arc = at(arcs.firstInto, node); arc >= 0; arc = at(arcs.nextInto, arc)) {
        const from = activityOf(at(arcs.from, arc));
        if (arcs.back[arc] === 1 || arcs.off[arc] === 1 || isIt[from] === 1) continue;
        isIt[from] = 1;
        reached.push(from);
      }
    }
  }
  const { rank } = parts.backward;
  return reached.sort((a, b) => at(rank, a) - at(rank, b));
}
