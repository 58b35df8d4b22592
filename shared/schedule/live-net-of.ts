import { must } from '../kernel/index.ts';
import { nodeOf } from './arcs-of-problem.ts';
import { components } from './components.ts';
import { bothOpen, type Hours, mirroredHours } from './hours.ts';
import type { Index } from './index-of.ts';
import { type LiveArc, LiveArcs } from './live-arcs.ts';
import { type Ceilings, type LiveNet, UNBOUND } from './live-net.ts';
import type { Link, Mode, Placement, Problem } from './model.ts';
import { type Arcs, arcsOf, at, endOf, grouped, otherEnd, startOf } from './network.ts';
import { precedenceOf } from './precedence.ts';
import type { Published } from './published.ts';
import { changeTimeS } from './state-change.ts';

export type LiveParts = {
  readonly net: LiveNet;
  /** The same facing backward, from all goals and deadlines. */
  readonly backward: LiveNet;
  /** Lags and links as decided. */
  readonly arcs: LiveArcs;
  /** The lag of each ceiling. */
  readonly ceilingLags: readonly number[];
};

/** What is fixed in the live day of a published schedule. */
export function liveNetOf({ problem, index, placements, links }: Published): LiveParts {
  const size = problem.activities.length;
  const modes = placements.map(({ activity, mode }, i) =>
    must(
      problem.activities[i]?.modes.find(({ id }) => id === mode),
      activity,
    ),
  );
  const lags = arcsOfLags(problem, index);
  const order = arcsOfLinks(links, index);
  const all = arcsOf([...lags, ...order], size * 2);
  const startsS = placements.map(({ startS }) => startS);
  const { rank } = precedenceOf({ arcs: all, size }, startsS);
  const { ceilings, ceilingLags } = ceilingsOf(problem, index, rank);
  const net: LiveNet = {
    facing: 'forward',
    size,
    ceilings,
    hardS: hardStarts(problem, modes, links, index),
    plannedS: Int32Array.from(placements.flatMap(({ startS, endS }) => [startS, endS])),
    hours: placements.map((placement) => hoursOf(problem, placement, index)),
    isWork: Uint8Array.from(modes, ({ length }) => (length.kind === 'work' ? 1 : 0)),
    rank,
    order: Int32Array.from(rank.keys()).sort((a, b) => at(rank, a) - at(rank, b)),
    ...componentsOf(size, all),
  };
  // Facing backward, maximum lags count from facts alone, and so never come round.
  const onward = arcsOf(
    [...lags, ...order].filter(({ back }) => !back),
    size * 2,
  );
  const backward = mirroredLive(net, latestOf(problem, index));
  return {
    net,
    backward: { ...backward, ...componentsOf(size, onward) },
    arcs: LiveArcs.of(lags, order, size * 2),
    ceilingLags,
  };
}

function arcsOfLags(problem: Problem, index: Index): LiveArc[] {
  return problem.lags.flatMap((lag, number) => {
    // A lag between an activity's own ends is in its length.
    if (lag.from.activity === lag.to.activity) return [];
    const [from, to] = [nodeOf(lag.from, index), nodeOf(lag.to, index)];
    const least = { from, to, weightS: lag.minS ?? 0, back: false, lag: number };
    const mostS = lag.maxS ?? 0;
    // One that asks for a distance is as good as a minimum the other way.
    const most = { ...least, from: to, to: from, weightS: -mostS, back: mostS >= 0 };
    return [...(lag.minS === undefined ? [] : [least]), ...(lag.maxS === undefined ? [] : [most])];
  });
}

function arcsOfLinks(links: readonly Link[], index: Index): LiveArc[] {
  return links.map((link) => {
    const first = index.activity(link.from);
    return {
      from: link.after === 'start' ? startOf(first) : endOf(first),
      to: startOf(index.activity(link.to)),
      weightS: link.gapS,
      back: false,
      lag: -1,
      link,
    };
  });
}

/** Releases, and the time it takes to bring a resource into the first state that is needed. */
function hardStarts(
  problem: Problem,
  modes: readonly Mode[],
  links: readonly Link[],
  index: Index,
): Int32Array {
  const hardS = new Int32Array(problem.activities.length * 2).fill(UNBOUND);
  const follows = new Set(links.map(({ to, resource }) => `${to} ${resource}`));
  problem.activities.forEach(({ id, releaseS, pin }, i) => {
    if (pin?.startS !== undefined || pin?.endS !== undefined) return;
    const changes = modes[i]?.states.map(({ resource, state }) => {
      const its = problem.resources[index.resource(resource)];
      if (its?.kind !== 'state' || its.initial === undefined) return 0;
      return follows.has(`${id} ${resource}`) ? 0 : changeTimeS(its, its.initial, state);
    });
    hardS[startOf(i)] = Math.max(0, releaseS ?? 0, ...(changes ?? []));
  });
  return hardS;
}

function hoursOf(problem: Problem, { uses }: Placement, index: Index): Hours | undefined {
  let both: Hours | undefined;
  for (const { resource } of uses) {
    const its = problem.resources[index.resource(resource)];
    if (its?.kind !== 'capacity' || !its.open) continue;
    const hours = Int32Array.from(its.open.flatMap(({ start, end }) => [start, end]));
    both = both ? bothOpen(both, hours) : hours;
  }
  return both;
}

/** Maximum lags from what comes first: published times after it yield to them. */
function ceilingsOf(problem: Problem, index: Index, rank: Int32Array) {
  const found = problem.lags.flatMap((lag, number) => {
    const [from, to] = [nodeOf(lag.from, index), nodeOf(lag.to, index)];
    const isOnward = at(rank, from >> 1) < at(rank, to >> 1);
    return lag.maxS !== undefined && isOnward ? [{ from, to, mostS: lag.maxS, number }] : [];
  });
  const from = Int32Array.from(found, (each) => each.from);
  const to = Int32Array.from(found, (each) => each.to);
  const nodes = problem.activities.length * 2;
  const ceilings: Ceilings = {
    from,
    to,
    mostS: Int32Array.from(found, ({ mostS }) => mostS),
    out: grouped(from, nodes),
    into: grouped(to, nodes),
  };
  return { ceilings, ceilingLags: found.map(({ number }) => number) };
}

function componentsOf(size: number, arcs: Arcs): Pick<LiveNet, 'component' | 'members'> {
  const after: number[][] = Array.from({ length: size }, () => []);
  for (let arc = 0; arc < arcs.count; arc++) {
    after[at(arcs.from, arc) >> 1]?.push(at(arcs.to, arc) >> 1);
  }
  const component = components(size, after);
  const members = new Int32Array(size);
  for (const number of component) members[number] = at(members, number) + 1;
  return { component, members };
}

/** By node: deadlines, the horizon, and goals. */
function latestOf(problem: Problem, index: Index): Int32Array {
  const latestS = new Int32Array(problem.activities.length * 2).fill(-UNBOUND);
  problem.activities.forEach(({ deadlineS }, i) => {
    latestS[endOf(i)] = Math.min(problem.horizonS, deadlineS ?? problem.horizonS);
  });
  for (const goal of problem.goals) {
    const node = nodeOf(goal, index);
    latestS[node] = Math.min(at(latestS, node), goal.dueS);
  }
  return latestS;
}

/**
 * The same net facing backward: what is asked of an end is now how late it may be. Published times
 * ask nothing there; deadlines and goals, as `latestS` of each node, are what does.
 */
function mirroredLive(net: LiveNet, latestS: Int32Array): LiveNet {
  const rank = net.rank.map((each) => net.size - 1 - each);
  return {
    ...net,
    facing: 'backward',
    hardS: latestS.map((_, node) => -at(latestS, otherEnd(node))),
    hours: net.hours.map((hours) => hours && mirroredHours(hours)),
    rank,
    order: net.order.slice().reverse(),
  };
}
