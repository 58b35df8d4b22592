import { nodeOf } from './arcs-of-problem.ts';
import type { Facts } from './facts.ts';
import { Floors } from './floors.ts';
import { rise } from './from-scratch.ts';
import type { Index } from './index-of.ts';
import { indexOf } from './index-of.ts';
import { Labels } from './labels.ts';
import { UNBOUND } from './live-net.ts';
import { type LiveParts, liveNetOf } from './live-net-of.ts';
import type { Goal, Link, Placement, Problem } from './model.ts';
import { otherEnd } from './network.ts';
import { Rule } from './rule.ts';
import { sharedUnits } from './shared-units.ts';

/** What is published: the problem, who does what where, and the order this makes. */
export type Published = {
  readonly problem: Problem;
  readonly index: Index;
  /** One for each activity, in the problem's order, with the times that were published. */
  readonly placements: readonly Placement[];
  readonly links: readonly Link[];
};

/** A published schedule together with what has happened, and all times that follow from both. */
export type Live = {
  readonly published: Published;
  readonly parts: LiveParts;
  readonly facts: Facts;
  /** See `Rule.shared`. */
  readonly shared: Uint8Array;
  readonly floors: Floors;
  readonly earliest: Labels;
  readonly latest: Labels;
};

/** Facing backward, the plan asks nothing. */
const NO_FLOORS = new Int32Array();

/** Works out all times of a published schedule, given what has happened. */
export function liveFrom(published: Published, facts: Facts): Live {
  const { problem, placements, links } = published;
  const parts = liveNetOf(problem, placements, links);
  const shared = sharedUnits(parts.net, facts);
  const floors = new Floors(parts.net, facts);
  return {
    published,
    parts,
    facts,
    shared,
    floors,
    earliest: Labels.from(new Rule(parts.net, facts, shared, floors.floorS)),
    latest: Labels.from(new Rule(parts.backward, facts, shared, NO_FLOORS)),
  };
}

/** A copy that can change by itself; what never changes is common to both. */
export function copyOf(live: Live): Live {
  const facts = live.facts.copy();
  const shared = live.shared.slice();
  const floors = live.floors.copy(facts);
  return {
    ...live,
    facts,
    shared,
    floors,
    earliest: live.earliest.copy(new Rule(live.parts.net, facts, shared, floors.floorS)),
    latest: live.latest.copy(new Rule(live.latest.rule.net, facts, shared, NO_FLOORS)),
  };
}

/**
 * The latest times on account of one goal alone: by node of the mirrored net, and negated; far below
 * nought where the goal does not wait.
 */
export function latestForGoal({ published, parts, facts, shared }: Live, goal: Goal): Int32Array {
  const hardS = new Int32Array(facts.stage.length * 2).fill(UNBOUND);
  hardS[otherEnd(nodeOf(goal, published.index))] = -goal.dueS;
  const rule = new Rule({ ...parts.toGoal, hardS }, facts, shared, NO_FLOORS);
  rise(rule);
  return rule.timeS;
}

/** What is published of a schedule, in the problem's order. */
export function publishedOf(
  problem: Problem,
  placements: readonly Placement[],
  links: readonly Link[],
): Published {
  const index = indexOf(problem);
  const inOrder = placements
    .slice()
    .sort((a, b) => index.activity(a.activity) - index.activity(b.activity));
  return { problem, index, placements: inOrder, links };
}
