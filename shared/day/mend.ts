import type { CommandId, DayId, Seconds, TaskId } from '../kernel/index.ts';
import { minutes, since } from '../kernel/index.ts';
import { resourceId, type Shut, withShut } from '../plan/index.ts';
import {
  type Activity,
  type Mode,
  type Placement,
  type Problem,
  type Repair,
  type ResourceId,
  repair,
  savedS,
  type Timeline,
  troubleOf,
} from '../schedule/index.ts';
import { placementOf } from './arrangement.ts';
import { EVENT_VERSION } from './event.ts';
import { heldUntil, holdsOf } from './held.ts';
import { mayBeOffered } from './later.ts';
import { Live } from './live.ts';
import type { MendFact } from './mend-fact.ts';
import { type MendOffer, mendOffer } from './mend-offer.ts';
import { afterMend } from './mended.ts';
import { promisesOn } from './outlook.ts';
import { passagesOf } from './passage.ts';
import { personName } from './plan-index.ts';
import { servicesIn } from './plan-offer.ts';
import type { Refusal } from './refusal.ts';
import { shutIn } from './shut.ts';
import type { DayState } from './state.ts';

/** A proposal, and the fact that it becomes if somebody takes it; null where there is none. */
export type Mend = { readonly offer: MendOffer; readonly fact: MendFact | null };

/** What begins so soon is on its way already: it is moved only where nothing else helps. */
const NEAR_S = minutes(20);
const SEED = 1;

/** What would mend the day as it now stands. Changes nothing. */
export function mendOf(live: Live): Mend {
  const repaired = repair(live.timeline, {
    seed: SEED,
    nearS: NEAR_S,
    problem: withoutLost(live),
    heldIf: (placements) => heldIf(live, placements),
    refuses: refusalOf(live),
  });
  const fact = factOf(live, repaired);
  const offer = mendOffer(live, fact ? mended(live, fact) : live, repaired.rung);
  if (mayBeOffered(offer.services)) return { offer, fact };
  return { offer: mendOffer(live, live, 'as-it-is'), fact: null };
}

/** Of days that were tried, those that make a service later and let no late one hold. */
function refusalOf({ timeline, index }: Live): (tried: Timeline) => boolean {
  const promised = [...promisesOn(timeline, index).values()];
  const standing = (day: Timeline) => promised.map((goals) => day.inHand(goals).inHandS);
  const before = standing(timeline);
  return (tried) => {
    const after = standing(tried);
    return !mayBeOffered(before.map((beforeS, i) => ({ beforeS, afterS: after[i] ?? null })));
  };
}

function factOf({ timeline }: Live, { differences, schedule }: Repair): MendFact | null {
  if (differences.length === 0) return null;
  // What runs may well end at another time: that is no decision of anybody.
  const changes = differences
    .map(({ after }) => after)
    .filter(({ activity }) => timeline.times(activity).stage === 'waiting');
  return { kind: 'dayMended', changes, links: schedule.links };
}

/** The day as it would go on if that were taken now; the day itself stays as it is. */
export function mended(live: Live, fact: MendFact): Live {
  const { state, now } = live;
  const next = new Live(state, now, live.timeline.fork());
  next.apply({
    ...fact,
    seq: state.seq + 1,
    version: EVENT_VERSION,
    day: live.index.plan.built.day as DayId,
    at: now,
    keptAt: now,
    commandId: 'tried' as CommandId,
    personId: null,
    screenId: null,
  });
  return next;
}

/** Why what was offered on an earlier day cannot be taken on this one; null where it can. */
export function whyNotMended(state: DayState, fact: MendFact, basedOnSeq: number): Refusal | null {
  if (state.plan === null) return { rule: 'no-plan' };
  const { closed } = state.happened;
  if (closed) {
    const by = personName(state.plan.kitchen, closed.by);
    return { rule: 'day-is-closed', at: closed.at, by };
  }
  if (basedOnSeq < state.arrangedSeq) return { rule: 'out-of-date' };
  const passages = passagesOf(state);
  const hasBegun = ({ activity }: Placement) => passages.get(activity)?.startedAt != null;
  return fact.changes.some(hasBegun) ? { rule: 'out-of-date' } : null;
}

/** Whether a day is still less in trouble with that than without. */
export function stillMends(live: Live, fact: MendFact): boolean {
  const { goals } = live.index.plan.built.problem;
  const next = mended(live, fact);
  if (!mayBeOffered(servicesIn(live, next))) return false;
  return savedS(troubleOf(live.timeline, goals), troubleOf(next.timeline, goals)) > 0;
}

/** What people and smokers that are away would hold, if the day were done so. */
function heldIf({ state, index, now }: Live, changes: readonly Placement[]) {
  const { origin } = index.plan.built;
  const holds = holdsOf(afterMend(state, { changes }));
  return new Map<TaskId, Seconds>(
    [...holds].map(([task, { backAt }]) => [task, since(origin, heldUntil(backAt, now))]),
  );
}

/**
 * What may still be chosen from: nobody who is out, no smoker that is down before it is back, and
 * into one that runs cold nothing that is not meant for it already.
 */
function withoutLost(live: Live): Problem {
  const { problem } = live.index.plan.built;
  const shut = shutIn(live);
  const cold = coldSlots(live);
  const closed: Shut = new Map([...shut].filter(([id]) => !cold.has(id)));
  const open = withShut(problem, closed);
  if (cold.size === 0) return open;
  return { ...open, activities: open.activities.map((each) => keptOut(live, each, cold)) };
}

function coldSlots({ state, index }: Live): Set<ResourceId> {
  const cold = state.happened.spells.filter(({ kind, until }) => kind === 'cold' && until === null);
  return new Set(
    cold.flatMap(({ smoker: id }) => {
      const smoker = index.plan.kitchen.smokers.find((each) => each.id === id);
      return smoker?.racks.map(({ slot }) => resourceId({ kind: 'slot', slot })) ?? [];
    }),
  );
}

function keptOut({ state, index }: Live, activity: Activity, cold: Set<ResourceId>): Activity {
  const { mode } = placementOf(state, index, activity.id);
  const isOut = (each: Mode) =>
    each.id !== mode &&
    each.needs.some(({ oneOf }) => oneOf.every((resource) => cold.has(resource)));
  return { ...activity, modes: activity.modes.filter((each) => !isOut(each)) };
}
