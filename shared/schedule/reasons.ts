import { must, seconds } from '../kernel/index.ts';
import { BY } from './by.ts';
import { WAITING } from './facts.ts';
import { NO_CEILING } from './floors.ts';
import { BREAK_MOST_S, nextFit } from './hours.ts';
import type { Live } from './live.ts';
import type { Lag, Placement } from './model.ts';
import { at } from './network.ts';
import type { Reason } from './timeline-types.ts';

/** What the projected time of a node hangs on. */
export function reasonOf(live: Live, node: number): Reason {
  return putOff(live, node) ?? reasonBy(live, node, at(live.earliest.rule.by, node));
}

function reasonBy(live: Live, node: number, by: number): Reason {
  const { facts } = live;
  if (by >= 0) return reasonByArc(live, by);
  switch (by) {
    case BY.fact:
      return { kind: 'fact' };
    case BY.hard:
      return { kind: 'release' };
    case BY.now:
      return { kind: 'now' };
    case BY.held:
      return { kind: 'held' };
    case BY.length:
      return { kind: 'length', lengthS: seconds(at(facts.minS, node >> 1)) };
    default:
      return planned(live, node);
  }
}

/** As published, or earlier because a lag or a wait would be too long. */
function planned({ parts, floors, published }: Live, node: number): Reason {
  if (at(floors.floorS, node) >= at(parts.net.plannedS, node)) return { kind: 'plan' };
  const ceiling = at(floors.ceiling, node);
  const lag = published.problem.lags[at(parts.ceilingLags, ceiling)];
  return { kind: 'yields', lag: ceiling === NO_CEILING ? null : (lag ?? null) };
}

/** What an arc of the live net stands for. */
export function reasonByArc(live: Live, arc: number): Reason {
  const { arcs } = live;
  const link = arcs.links[arc];
  if (link) return { kind: 'link', link };
  const bound = arcs.back[arc] === 1 ? 'most' : 'least';
  return { kind: 'lag', lag: lagOf(live, at(arcs.lag, arc)), bound };
}

const lagOf = ({ published }: Live, number: number): Lag =>
  must(published.problem.lags[number], 'a lag');

/**
 * Whether a start was put off until somebody is there again: then what is asked of it is earlier.
 */
function putOff(live: Live, node: number): Reason | undefined {
  const { parts, facts, earliest, published } = live;
  const activity = node >> 1;
  const hours = parts.net.hours[activity];
  if ((node & 1) === 1 || !hours || facts.stage[activity] !== WAITING) return undefined;
  const { rule } = earliest;
  rule.trust = 'others';
  rule.askNear(activity, false);
  const { bestS: askedS, bestBy } = rule;
  const atS = at(rule.timeS, node);
  const lengthS = at(facts.minS, activity);
  if (askedS >= atS || nextFit(hours, askedS, lengthS, BREAK_MOST_S) !== atS) return undefined;
  const placement = must(published.placements[activity], 'a placement');
  const closed = closedAt(live, placement, askedS, lengthS);
  const because = reasonBy(live, node, bestBy);
  return { kind: 'shift', resource: closed, offS: seconds(atS - askedS), because };
}

/** The resource whose hours do not take work that starts then. */
function closedAt({ published }: Live, { uses }: Placement, startS: number, lengthS: number) {
  const { resources } = published.problem;
  const its = uses.map(({ resource }) => resource);
  const shut = its.find((id) => {
    const resource = resources.find((each) => each.id === id);
    if (resource?.kind !== 'capacity' || !resource.open) return false;
    const hours = Int32Array.from(resource.open.flatMap(({ start, end }) => [start, end]));
    return nextFit(hours, startS, lengthS, BREAK_MOST_S) > startS;
  });
  return must(shut ?? its[0], 'somebody is put off by somebody');
}
