import type { Instant, Seconds, TaskId } from '../kernel/index.ts';
import { after, instant, must, seconds } from '../kernel/index.ts';
import type { Task } from '../plan/index.ts';
import { passagesOf } from './passage.ts';
import type { PlanIndex } from './plan-index.ts';
import type { DayState } from './state.ts';

/** Where food is kept, since when, and how long its route lets it. */
export type Kept = {
  readonly task: TaskId;
  readonly in: 'cabinet' | 'cooler';
  /** No hand marks the change from one wait to the next, so that it may lie ahead. */
  readonly since: Instant;
  readonly mostS: Seconds;
};

/** Where a batch is kept now: the last of the places that it came to; null where nowhere yet. */
export function keptNow(
  state: DayState,
  index: PlanIndex,
  { tasks, serve, now }: { tasks: readonly Task[]; serve: TaskId; now: Instant },
): Kept | null {
  const kept = keptIn(state, index, tasks, serve).filter(({ since }) => since <= now);
  return kept.sort((a, b) => b.since - a.since)[0] ?? null;
}

/** All places in which a batch is kept and has not left, in a cabinet or in a cooler to be sold. */
export function keptIn(
  state: DayState,
  index: PlanIndex,
  tasks: readonly Task[],
  serve: TaskId,
): Kept[] {
  return tasks.flatMap(({ id }): Kept[] => {
    if (passagesOf(state).get(id)?.finishedAt != null) return [];
    const place = placeOf(index, id, serve);
    const since = place && beganAt(state, index, id);
    return place && since !== null ? [{ task: id, since, ...place }] : [];
  });
}

/**
 * What keeps it, and the longest that its route lets it; null for any other task, such as a night
 * in the cooler before the fire.
 */
function placeOf(index: PlanIndex, task: TaskId, serve: TaskId): Pick<Kept, 'in' | 'mostS'> | null {
  const mode = index.activities.get(task)?.modes[0];
  if (mode?.length.kind !== 'wait') return null;
  const { maxS } = mode.length;
  const isWarm = mode.needs.some(({ role }) => role === 'pans' || role === 'whole');
  if (isWarm) return { in: 'cabinet', mostS: maxS };
  const isCold = mode.needs.some(({ role }) => role === 'cooler') && endsWith(index, task, serve);
  return isCold ? { in: 'cooler', mostS: maxS } : null;
}

const endsWith = (index: PlanIndex, task: TaskId, serve: TaskId): boolean =>
  (index.lagsInto.get(task) ?? []).some(
    ({ from, to }) => to.end === 'end' && from.activity === serve && from.end === 'end',
  );

/**
 * When a wait began. No hand marks the change from one wait to the next, as from venting to the
 * rest in the cabinet: the planned length of the first does, and it may lie ahead.
 */
function beganAt(state: DayState, index: PlanIndex, task: TaskId): Instant | null {
  const { startedAt } = must(passagesOf(state).get(task), task);
  if (startedAt !== null) return startedAt;
  const before = (index.lagsInto.get(task) ?? []).filter(
    ({ to, minS }) => to.end === 'start' && minS !== undefined && minS >= 0,
  );
  const times = before.map(({ from }) => momentOf(state, index, from.activity, from.end));
  if (times.length === 0 || times.includes(null)) return null;
  return instant(Math.max(...times.map(Number)));
}

function momentOf(
  state: DayState,
  index: PlanIndex,
  task: TaskId,
  end: 'start' | 'end',
): Instant | null {
  if (end === 'start') return beganAt(state, index, task);
  const { finishedAt } = must(passagesOf(state).get(task), task);
  if (finishedAt !== null || index.tasks.get(task)?.work !== 'wait') return finishedAt;
  const began = beganAt(state, index, task);
  const { startS, endS } = must(index.placements.get(task), task);
  return began && after(began, seconds(endS - startS));
}
