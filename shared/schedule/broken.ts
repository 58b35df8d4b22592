import { seconds } from '../kernel/index.ts';
import { nodeOf } from './arcs-of-problem.ts';
import { DONE } from './facts.ts';
import { outsideS } from './hours.ts';
import type { Live } from './live.ts';
import type { Lag, Link } from './model.ts';
import { at } from './network.ts';
import type { Broken } from './timeline-types.ts';

/** Everything that the projected times do not keep, which facts have made impossible. */
export function brokenIn(live: Live): Broken[] {
  const { problem, placements } = live.published;
  return [
    ...problem.lags.flatMap((lag) => brokenLag(live, lag)),
    ...live.turns.links.flatMap((link) => brokenLink(live, link)),
    ...placements.flatMap((_, activity) => [
      ...brokenWait(live, activity),
      ...brokenHours(live, activity),
      ...brokenDeadline(live, activity),
    ]),
  ];
}

const timeOf = ({ earliest }: Live, node: number) => at(earliest.rule.timeS, node);

function brokenLag(live: Live, lag: Lag): Broken[] {
  const [from, to] = [nodeOf(lag.from, live.published.index), nodeOf(lag.to, live.published.index)];
  const betweenS = timeOf(live, to) - timeOf(live, from);
  const byS = Math.max((lag.minS ?? betweenS) - betweenS, betweenS - (lag.maxS ?? betweenS));
  if (byS <= 0) return [];
  const { rule } = live.earliest;
  const settled = rule.isFact(from) && rule.isFact(to);
  return [{ kind: 'lag', lag, byS: seconds(byS), settled }];
}

/** Only while it still matters: what is done shares nothing any more. */
function brokenLink(live: Live, link: Link): Broken[] {
  const { index } = live.published;
  const [from, to] = [index.activity(link.from), index.activity(link.to)];
  if (live.facts.stage[from] === DONE || live.facts.stage[to] === DONE) return [];
  const freeS = timeOf(live, from * 2 + (link.after === 'start' ? 0 : 1)) + link.gapS;
  const byS = freeS - timeOf(live, to * 2);
  return byS > 0 ? [{ kind: 'link', link, byS: seconds(byS) }] : [];
}

function brokenWait(live: Live, activity: number): Broken[] {
  const { facts, parts, published } = live;
  if (parts.net.isWork[activity] === 1) return [];
  const lengthS = timeOf(live, activity * 2 + 1) - timeOf(live, activity * 2);
  const shortS = at(facts.minS, activity) - lengthS;
  const longS = lengthS - at(facts.maxS, activity);
  const byS = Math.max(shortS, longS);
  const id = published.placements[activity]?.activity;
  if (byS <= 0 || id === undefined) return [];
  const bound = shortS > 0 ? 'least' : 'most';
  const settled = facts.stage[activity] === DONE;
  return [{ kind: 'wait', activity: id, bound, byS: seconds(byS), settled }];
}

/** Somebody is kept past the end of a shift, or is asked for when not there. */
function brokenHours(live: Live, activity: number): Broken[] {
  const { facts, published } = live;
  const { problem, placements } = published;
  const placement = placements[activity];
  const pin = problem.activities[activity]?.pin;
  const isPinned = pin?.startS !== undefined || pin?.endS !== undefined;
  if (!placement || facts.stage[activity] === DONE || isPinned) return [];
  const [startS, endS] = [timeOf(live, activity * 2), timeOf(live, activity * 2 + 1)];
  return placement.uses.flatMap(({ resource: id }): Broken[] => {
    const resource = problem.resources.find((each) => each.id === id);
    if (resource?.kind !== 'capacity' || !resource.open) return [];
    const hours = Int32Array.from(resource.open.flatMap(({ start, end }) => [start, end]));
    const byS = outsideS(hours, startS, endS);
    if (byS <= 0) return [];
    return [{ kind: 'closed', activity: placement.activity, resource: id, byS: seconds(byS) }];
  });
}

function brokenDeadline(live: Live, activity: number): Broken[] {
  const its = live.published.problem.activities[activity];
  if (its?.deadlineS === undefined) return [];
  const byS = timeOf(live, activity * 2 + 1) - its.deadlineS;
  return byS > 0 ? [{ kind: 'deadline', activity: its.id, byS: seconds(byS) }] : [];
}
