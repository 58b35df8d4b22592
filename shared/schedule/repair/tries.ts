import { type ActivityId, must } from '../../kernel/index.ts';
import { construct } from '../construct.ts';
import type { Goal, Problem } from '../model.ts';
import { redecided, turnedRound } from '../relink.ts';
import { LiveTimeline } from '../timeline.ts';
import type { Move, Reason, Step } from '../timeline-types.ts';
import { remainingOf } from './remaining.ts';

/** So many orders are turned round, and so many moves tried, at the most. */
const ORDERS_MOST = 16;
const MOVES_MOST = 60;
/** What part of their lateness goals are left, where they cannot be on time. */
const PARTS_LATE = [0, 0.5, 0.9];
const ATTEMPTS = 4;

/** What goals that are late hang on, what is nearest to the goal first. */
function chainsOf(timeline: LiveTimeline, goals: readonly Goal[]): Step[] {
  const isLate = ({ activity, end, dueS }: Goal) => timeline.times(activity)[`${end}S`] > dueS;
  return goals.filter(isLate).flatMap(({ id }) => timeline.criticalChain(id).reverse());
}

/** Every order of two on one thing, on the way to a late goal, turned round. */
export function ordersTurned(timeline: LiveTimeline, goals: readonly Goal[]): LiveTimeline[] {
  const pairs = new Map<string, readonly [ActivityId, ActivityId]>();
  for (const { reason } of chainsOf(timeline, goals)) {
    const link = linkOf(reason);
    if (!link) continue;
    const isOpen = [link.from, link.to].every((id) => timeline.times(id).stage === 'waiting');
    if (isOpen && pairs.size < ORDERS_MOST)
      pairs.set(`${link.from} ${link.to}`, [link.from, link.to]);
  }
  const { live } = timeline;
  const { index } = live.published;
  return [...pairs.values()].map(
    ([sooner, later]) =>
      new LiveTimeline(turnedRound(live, index.activity(sooner), index.activity(later))),
  );
}

function linkOf(reason: Reason) {
  if (reason.kind === 'shift') return linkOf(reason.because);
  return reason.kind === 'link' ? reason.link : undefined;
}

/** One activity on the way to a late goal done by others, elsewhere or in another way. */
export function movedElsewhere(
  timeline: LiveTimeline,
  problem: Problem,
  goals: readonly Goal[],
): LiveTimeline[] {
  const steps = chainsOf(timeline, goals);
  const named = steps.flatMap(({ activity, reason }) => [
    activity,
    linkOf(reason)?.from ?? activity,
  ]);
  const moves = [...new Set(named)]
    .filter((id) => timeline.times(id).stage === 'waiting')
    .flatMap((id) => movesOf(problem, timeline, id));
  return moves.slice(0, MOVES_MOST).map((move) => {
    const tried = timeline.fork();
    tried.moved([move]);
    return tried;
  });
}

function movesOf({ activities }: Problem, timeline: LiveTimeline, id: ActivityId): Move[] {
  const { published } = timeline.live;
  const { mode, uses } = must(published.placements[published.index.activity(id)], id);
  const { modes, pin } = must(activities[published.index.activity(id)], id);
  if (pin) return [];
  return modes.flatMap((each): Move[] => {
    if (each.id !== mode) {
      const first = each.needs.flatMap(({ oneOf: [resource] }, need) =>
        resource ? [{ need, resource }] : [],
      );
      return [{ activity: id, mode: each.id, uses: first }];
    }
    return each.needs.flatMap(({ oneOf }, need) => {
      const used = new Set(uses.map(({ resource }) => resource));
      return oneOf
        .filter((resource) => !used.has(resource))
        .map((resource) => ({
          activity: id,
          mode,
          uses: uses.map((use) => (use.need === need ? { need, resource } : use)),
        }));
    });
  });
}

/**
 * All that is not frozen planned anew: with every goal on time, or else with those that are late
 * less so.
 */
export function plannedAnew(
  timeline: LiveTimeline,
  problem: Problem,
  isFrozen: (activity: ActivityId) => boolean,
  seed: number,
): LiveTimeline[] {
  for (const part of PARTS_LATE) {
    const lateS = ({ activity, end, dueS }: Goal) =>
      Math.ceil(part * Math.max(0, timeline.times(activity)[`${end}S`] - dueS));
    const left = remainingOf(problem, timeline, isFrozen, lateS);
    const planned = construct(left, { seed, attempts: ATTEMPTS, isTrial: true });
    if (planned.ok) return [new LiveTimeline(redecided(timeline.live, planned.schedule))];
  }
  return [];
}
