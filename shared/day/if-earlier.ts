import type { Instant, Seconds, TaskId } from '../kernel/index.ts';
import { minutes, must, seconds } from '../kernel/index.ts';
import type { Placement, Timeline } from '../schedule/index.ts';
import { currentHands, modeOf } from './arrangement.ts';
import { chainBefore, soonestStarts } from './chain-before.ts';
import type { Live } from './live.ts';
import { passagesOf } from './passage.ts';
import { taskName } from './plan-index.ts';
import type { Refusal } from './refusal.ts';
import { factsOf } from './state.ts';

/** The day as if a load had gone in sooner than it is now expected to. */
export type Earlier = {
  readonly tried: Timeline;
  /** When hands would begin to load it. */
  readonly at: Instant;
  /** What hands would have to begin first for that, and when; null for the loading itself. */
  readonly first: { readonly task: TaskId; readonly at: Instant } | null;
};

export type IfEarlier =
  | ({ readonly ok: true } & Earlier)
  | { readonly ok: false; readonly refusal: Refusal };

/**
 * Tries a load that waits so much sooner, on a copy: what hands have yet to do for it comes sooner
 * with it, and nothing else does. Refused where something is in the way, with how much sooner it
 * could be, which has been tried.
 */
export function ifEarlier(live: Live, stay: TaskId, byS: Seconds): IfEarlier {
  const { state, index } = live;
  if (index.tasks.get(stay)?.work !== 'place') return no({ rule: 'unknown-place' });
  const startedAt = passagesOf(state).get(stay)?.startedAt ?? null;
  if (startedAt !== null) return no({ rule: 'in-already', at: startedAt });
  const load = loadingOf(live, stay);
  if (!load) return no({ rule: 'unknown-place' });
  const before = chainBefore(live, load);
  const beginS = live.timesOf(load).startS;
  const withIt = beginWith(live, load, stay);
  const soonest = soonestStarts(live, before, { withIt, from: () => live.nowS });
  const mostS = seconds(Math.max(0, beginS - must(soonest.startsS.get(load), load)));
  const all = [...before, ...cookAfter(live, load, stay)];
  const known = new Set(live.timeline.broken().map(nameOf));
  const trySooner = (s: Seconds): Earlier | null => {
    const from = (task: TaskId) => live.timesOf(task).startS - s;
    const { startsS } = soonestStarts(live, all, { withIt: new Map(), from });
    if (!inShift(live, startsS)) return null;
    const sooner = startedSooner(live, load, startsS);
    return breaksNothing(known, sooner.tried) ? sooner : null;
  };
  const asked = byS > mostS ? null : trySooner(byS);
  if (asked) return { ok: true, ...asked };
  const nearestS = nearestThatCan(seconds(Math.min(byS, mostS)), (s) => trySooner(s) !== null);
  const holdsUp = nearestS === mostS && soonest.boundBy ? soonest.boundBy : null;
  const holder = holdsUp && taskName(index, holdsUp);
  return no({ rule: 'not-so-early', mostS: nearestS, before: holder });
}

/** Where little can be tried in a moment, it is tried in strides first. */
const STRIDES = 40;

/**
 * The most that can be, of no more than so much: that itself, else by whole minutes. Not halved:
 * what falls into a break may go once it lies before that.
 */
export function nearestThatCan(mostS: Seconds, can: (s: Seconds) => boolean): Seconds {
  if (mostS === 0 || can(mostS)) return mostS;
  const minutesMost = Math.ceil(mostS / 60) - 1;
  const stride = Math.max(1, Math.ceil(minutesMost / STRIDES));
  for (let from = minutesMost; from > 0; from -= stride) {
    if (!can(minutes(from))) continue;
    for (let more = from + stride - 1; more > from; more--) {
      if (more <= minutesMost && can(minutes(more))) return minutes(more);
    }
    return minutes(from);
  }
  return seconds(0);
}

const no = (refusal: Refusal): IfEarlier => ({ ok: false, refusal });

/** What hands do that puts it in. */
function loadingOf({ index, state }: Live, stay: TaskId): TaskId | null {
  const into = (index.lagsInto.get(stay) ?? []).filter(
    ({ from, to, minS }) =>
      to.end === 'start' &&
      minS !== undefined &&
      minS >= 0 &&
      index.tasks.get(from.activity)?.work === 'hands',
  );
  const open = into.find(({ from }) => factsOf(state, from.activity).started === null);
  return open?.from.activity ?? null;
}

/** The stay and what is done to the load while it lasts, first thing first, with the taking off. */
function cookAfter(live: Live, load: TaskId, stay: TaskId): TaskId[] {
  const { index } = live;
  const { startS, endS } = live.timesOf(stay);
  const { batch } = must(index.tasks.get(stay), stay);
  return [...index.tasks.values()]
    .filter((task) => task.batch === batch && task.id !== load)
    .map(({ id }) => ({ id, startS: live.timesOf(id).startS }))
    .filter((task) => startS <= task.startS && task.startS < endS)
    .sort((a, b) => a.startS - b.startS)
    .map(({ id }) => id);
}

/** The stay and its stages that begin as it does: what is in their way is in the loading's. */
function beginWith(live: Live, load: TaskId, stay: TaskId): ReadonlyMap<TaskId, Seconds> {
  const { index } = live;
  const { startS } = live.timesOf(stay);
  const { batch } = must(index.tasks.get(stay), stay);
  const stages = [...index.tasks.values()]
    .filter((task) => task.work === 'fire' && task.batch === batch)
    .filter(({ id }) => live.timesOf(id).startS === startS);
  const laterS = seconds(startS - live.timesOf(load).startS);
  return new Map([stay, ...stages.map(({ id }) => id)].map((id) => [id, laterS]));
}

/** Whether the hands are there for all of it. */
function inShift(live: Live, startsS: ReadonlyMap<TaskId, number>): boolean {
  return [...startsS].every(([task, startS]) => {
    const planned = live.timesOf(task);
    const lengthS = planned.endS - planned.startS;
    return currentHands(live.state, live.index, task).every((hand) =>
      live.shiftsOf(hand).some(({ start, end }) => start <= startS && startS + lengthS <= end),
    );
  });
}

/** The day as if it had been planned so from now on: nothing of it has happened yet. */
function startedSooner(live: Live, load: TaskId, startsS: ReadonlyMap<TaskId, number>): Earlier {
  const { index } = live;
  const { placements, links } = live.timeline.schedule;
  const sooner = placements.flatMap((placement): Placement[] => {
    const startS = startsS.get(placement.activity);
    if (startS === undefined) return [];
    const endS = endOf(live, placement, startsS);
    return [{ ...placement, startS: seconds(startS), endS: seconds(endS) }];
  });
  const tried = live.timeline.fork();
  tried.decided(sooner, links);
  const byHand = [...startsS]
    .filter(([task]) => index.tasks.get(task)?.work === 'hands')
    .sort(([, a], [, b]) => a - b);
  const at = (startS: number) => live.instantOf(seconds(startS));
  const [first] = byHand;
  return {
    ...{ tried, at: at(must(startsS.get(load), load)) },
    first: first && first[0] !== load ? { task: first[0], at: at(first[1]) } : null,
  };
}

/** Work takes as long as it did; a wait, and what only lies there, ends when hands come for it. */
function endOf(
  { index }: Live,
  placement: Placement,
  startsS: ReadonlyMap<TaskId, number>,
): number {
  const { activity } = placement;
  const startS = must(startsS.get(activity), activity);
  const lengthS = placement.endS - placement.startS;
  if (modeOf(index, placement).length.kind !== 'wait') return startS + lengthS;
  const sooner = (task: TaskId) => {
    const planned = must(index.placements.get(task), task);
    const byS = planned.startS - (startsS.get(task) ?? planned.startS);
    return { startS: planned.startS - byS, endS: planned.endS - byS };
  };
  const ties = (index.lagsInto.get(activity) ?? []).flatMap(({ from, to, minS }) =>
    to.end === 'end' && minS !== undefined ? [sooner(from.activity)[`${from.end}S`] + minS] : [],
  );
  if (ties.length > 0) return Math.max(startS, ...ties);
  const sequels = (index.lagsOutOf.get(activity) ?? []).flatMap(({ from, to, minS }) =>
    from.end === 'end' && to.end === 'start' && minS !== undefined
      ? [sooner(to.activity).startS - minS]
      : [],
  );
  return Math.max(startS, Math.min(placement.endS, ...sequels));
}

/** Whether all is kept that would have been kept without it. */
function breaksNothing(known: ReadonlySet<string>, tried: Timeline): boolean {
  return tried.broken().every((broken) => known.has(nameOf(broken)));
}

/** What is broken, by however much. */
const nameOf = ({ byS: _, ...broken }: ReturnType<Timeline['broken']>[number]) =>
  JSON.stringify(broken);
