import type { ActivityId, Seconds } from '../kernel/index.ts';
import { assert } from '../kernel/index.ts';
import { Floors } from './floors.ts';
import { raiseAll } from './from-scratch.ts';
import type { GoalId } from './model.ts';
import { at } from './network.ts';
import { inHandOf } from './outlook.ts';
import { goalsOf } from './published.ts';
import { Rule } from './rule.ts';
import { LiveTimeline } from './timeline.ts';
import type { InHand, Timeline } from './timeline-types.ts';

/**
 * What each of some groups of goals would have in hand if these took so long instead; the day
 * itself is left as it is. One pass from scratch: many lengths at once move nearly everything.
 * Maximum lags are not heeded, as for the goals themselves: so far from the plan many cannot hold
 * together, and nothing is late by them.
 */
export function inHandIf(
  timeline: Timeline,
  lengths: Iterable<readonly [ActivityId, Seconds]>,
  groups: readonly (readonly GoalId[])[],
): InHand[] {
  assert(timeline instanceof LiveTimeline, 'there is one timeline');
  const { live } = timeline;
  const { published, parts, arcs } = live;
  const facts = live.facts.copy();
  for (const [id, lengthS] of lengths) {
    const activity = published.index.activity(id);
    facts.minS[activity] = lengthS;
    const isWork = parts.net.isWork[activity] === 1;
    facts.maxS[activity] = isWork ? lengthS : Math.max(lengthS, at(facts.maxS, activity));
  }
  const { floorS } = new Floors(parts.net, facts);
  const rule = new Rule(parts.net, { arcs, facts, floorS, heedsMaxima: false });
  raiseAll(rule, parts.net.order);
  const standing = { published, parts, arcs, facts, earliest: { rule } };
  return groups.map((ids) => inHandOf(standing, goalsOf(published, ids)));
}
