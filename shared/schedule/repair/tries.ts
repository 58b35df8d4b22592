import { type ActivityId, must } from '../../kernel/index.ts';
import { construct } from '../construct.ts';
import { UNBOUND } from '../live-net.ts';
import type { Goal, GoalId, Mode, Problem, ResourceId } from '../model.ts';
import { redecided, turnedRound } from '../relink.ts';
import { LiveTimeline } from '../timeline.ts';
import type { Broken, Move, Reason, Step } from '../timeline-types.ts';
import { validate } from '../validate.ts';
import { type Question, why } from '../why.ts';
import { type Leaving, remainingOf } from './remaining.ts';
import { openIn } from './trouble.ts';

/** So many orders are turned round, and so many moves tried, at the most. */
const ORDERS_MOST = 16;
const MOVES_MOST = 30;
/** What part of their lateness goals are left, where they cannot be on time. */
const PARTS_LATE = [0, 0.5, 0.9];
const ATTEMPTS = 4;

/**
 * What goals that are late hang on, and then what else will not be kept; what is nearest to it
 * first.
 */
function chainsOf(timeline: LiveTimeline, goals: readonly Goal[]): Step[] {
  const isLate = ({ activity, end, dueS }: Goal) => timeline.times(activity)[`${end}S`] > dueS;
  const late = goals.filter(isLate).flatMap(({ id }) => timeline.criticalChain(id).reverse());
  const broken = openIn(timeline).flatMap(questionsOf);
  return [...late, ...broken.flatMap((about) => why(timeline, about).reverse())];
}

/** The times that something broken hangs on. */
function questionsOf(broken: Broken): Question[] {
  switch (broken.kind) {
    case 'lag':
      return [broken.lag.to, broken.lag.from];
    case 'link':
      return [{ activity: broken.link.to, end: 'start' }];
    default:
      return [{ activity: broken.activity, end: broken.kind === 'closed' ? 'start' : 'end' }];
  }
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

/**
 * One activity done by others, elsewhere or in another way, where it is that which it waits for on
 * the way to what is late: who or what it shares, their hours, or what holds it. Where it waits for
 * nothing but the work itself, a quicker way.
 */
export function movedElsewhere(
  timeline: LiveTimeline,
  problem: Problem,
  goals: readonly Goal[],
): LiveTimeline[] {
  const stuck = new Set<ActivityId>();
  const slow = new Set<ActivityId>();
  for (const { activity, reason } of chainsOf(timeline, goals)) {
    if (reason.kind === 'length') slow.add(activity);
    for (const id of stuckBy(timeline, activity, reason)) stuck.add(id);
  }
  const isOpen = (id: ActivityId) => timeline.times(id).stage === 'waiting';
  const moves = [
    ...[...stuck].filter(isOpen).flatMap((id) => movesOf(problem, timeline, id)),
    ...[...slow].filter(isOpen).flatMap((id) => quickerWays(problem, timeline, id)),
  ];
  return moves.slice(0, MOVES_MOST).map((move) => {
    const tried = timeline.fork();
    tried.moved([move]);
    return tried;
  });
}

/** Whom it would help to have elsewhere. */
function stuckBy(timeline: LiveTimeline, activity: ActivityId, reason: Reason): ActivityId[] {
  switch (reason.kind) {
    case 'link':
      return [activity, reason.link.from];
    case 'shift':
      return [activity, ...stuckBy(timeline, activity, reason.because)];
    case 'held':
      return [activity, ...heldWith(timeline, activity)];
    default:
      return [];
  }
}

/** What is held together with it: whoever loads a place waits with what is to lie there. */
function heldWith(timeline: LiveTimeline, activity: ActivityId): ActivityId[] {
  const isHeld = heldIn(timeline);
  return timeline.live.published.problem.lags
    .filter(({ from, to }) => from.activity === activity || to.activity === activity)
    .flatMap(({ from, to }) => [from.activity, to.activity])
    .filter((id) => id !== activity && isHeld(id));
}

const heldIn =
  ({ live }: LiveTimeline) =>
  (id: ActivityId) =>
    live.facts.heldS[live.published.index.activity(id)] !== UNBOUND;

function quickerWays(problem: Problem, timeline: LiveTimeline, id: ActivityId): Move[] {
  const { startS, endS } = timeline.times(id);
  const { modes } = must(problem.activities[timeline.live.published.index.activity(id)], id);
  const quicker = modes.filter(({ length }) => {
    return length.kind === 'work' && length.typicalS < endS - startS;
  });
  return movesOf(problem, timeline, id).filter((move) => quicker.some((e) => e.id === move.mode));
}

/** Every way with each one of its needs filled in each way, else as it is where that can be. */
function movesOf({ activities }: Problem, timeline: LiveTimeline, id: ActivityId): Move[] {
  const { published } = timeline.live;
  const { mode, uses } = must(published.placements[published.index.activity(id)], id);
  const { modes, pin } = must(activities[published.index.activity(id)], id);
  if (pin) return [];
  const used = uses.map(({ resource }) => resource);
  return modes.flatMap((each): Move[] => {
    const own = asBefore(each, used);
    const turned = each.needs.flatMap(({ oneOf }, need) =>
      oneOf
        .filter((resource) => !own.includes(resource))
        .map((resource) => own.map((is, i) => (i === need ? resource : is))),
    );
    return [...(each.id === mode ? [] : [own]), ...turned].map((filled) => ({
      activity: id,
      mode: each.id,
      uses: filled.map((resource, need) => ({ need, resource })),
    }));
  });
}

/** What fills the needs of a mode: what is used already where it may be, else the first. */
const asBefore = ({ needs }: Mode, used: readonly ResourceId[]): ResourceId[] =>
  needs.map(({ oneOf }) => {
    return must(oneOf.find((resource) => used.includes(resource)) ?? oneOf[0], 'a resource');
  });

/** What is left as it is, from when on the rest is planned, and by which seed. */
export type Anew = Pick<Leaving, 'isFrozen' | 'fromS'> & { readonly seed: number };

/**
 * All that is not frozen planned anew: with every goal as little late as it can be, or else with
 * those that are late less so. First who and what is not on the way to what is late stays where it
 * is, then all may go elsewhere.
 */
export function plannedAnew(
  timeline: LiveTimeline,
  problem: Problem,
  { seed, ...anew }: Anew,
): LiveTimeline[] {
  const onTheWay = new Set(
    chainsOf(timeline, problem.goals).flatMap(({ activity, reason }) => [
      activity,
      ...stuckBy(timeline, activity, reason),
    ]),
  );
  const isHeld = heldIn(timeline);
  const staysThere = (id: ActivityId) => !onTheWay.has(id) && !isHeld(id);
  return [staysThere, () => false].flatMap((stays) => {
    const leastS = leastLateS(remainingOf(problem, timeline, { ...anew, stays, lateS: () => 0 }));
    for (const part of PARTS_LATE) {
      const lateS = ({ id, activity, end, dueS }: Goal) => {
        const nowS = Math.max(0, timeline.times(activity)[`${end}S`] - dueS);
        const provenS = Math.min(nowS, leastS.get(id) ?? 0);
        return Math.ceil(provenS + part * (nowS - provenS));
      };
      const left = remainingOf(problem, timeline, { ...anew, stays, lateS });
      const planned = construct(left, { seed, attempts: ATTEMPTS, isTrial: true });
      if (planned.ok) return [new LiveTimeline(redecided(timeline.live, planned.schedule))];
    }
    return [];
  });
}

/** By how much goals must be late whoever does what: chains alone are longer than the time left. */
function leastLateS(problem: Problem): ReadonlyMap<GoalId, number> {
  return new Map(
    validate(problem).flatMap((each) => {
      return each.kind === 'goal-too-early' ? [[each.goal, each.shortS] as const] : [];
    }),
  );
}
