import { nodeOf } from './arcs-of-problem.ts';
import type { Facts } from './facts.ts';
import { Floors } from './floors.ts';
import { rise } from './from-scratch.ts';
import { Labels } from './labels.ts';
import { UNBOUND } from './live-net.ts';
import { type LiveParts, liveNetOf } from './live-net-of.ts';
import type { Goal, Link } from './model.ts';
import { otherEnd } from './network.ts';
import { linksNow } from './out-of-turn.ts';
import type { Published } from './published.ts';
import { Rule } from './rule.ts';

/** A published schedule together with what has happened, and all times that follow from both. */
export type Live = {
  readonly published: Published;
  /** The order that holds now: see `linksNow`. */
  readonly links: readonly Link[];
  readonly parts: LiveParts;
  readonly facts: Facts;
  readonly floors: Floors;
  readonly earliest: Labels;
  readonly latest: Labels;
};

/** Facing backward, the plan asks nothing. */
const NO_FLOORS = new Int32Array();

/** Works out all times of a published schedule, given what has happened. */
export function liveFrom(published: Published, facts: Facts): Live {
  const { problem, placements } = published;
  const links = linksNow(published, facts);
  const parts = liveNetOf(problem, placements, links);
  const floors = new Floors(parts.net, facts);
  return {
    published,
    links,
    parts,
    facts,
    floors,
    earliest: Labels.from(new Rule(parts.net, facts, floors.floorS)),
    latest: Labels.from(new Rule(parts.backward, facts, NO_FLOORS)),
  };
}

/** A copy that can change by itself; what never changes is common to both. */
export function copyOf(live: Live): Live {
  const facts = live.facts.copy();
  const floors = live.floors.copy(facts);
  return {
    ...live,
    facts,
    floors,
    earliest: live.earliest.copy(new Rule(live.parts.net, facts, floors.floorS)),
    latest: live.latest.copy(new Rule(live.latest.rule.net, facts, NO_FLOORS)),
  };
}

/**
 * The latest times on account of one goal alone: by node of the mirrored net, and negated; far below
 * nought where the goal does not wait.
 */
export function latestForGoal({ published, parts, facts }: Live, goal: Goal): Int32Array {
  const hardS = new Int32Array(facts.stage.length * 2).fill(UNBOUND);
  hardS[otherEnd(nodeOf(goal, published.index))] = -goal.dueS;
  const rule = new Rule({ ...parts.toGoal, hardS }, facts, NO_FLOORS);
  rise(rule);
  return rule.timeS;
}
