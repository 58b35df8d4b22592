import type { Instant, TaskId } from '../kernel/index.ts';
import { after, instant, must, seconds } from '../kernel/index.ts';
import { passagesOf } from './passage.ts';
import type { PlanIndex } from './plan-index.ts';
import type { DayState } from './state.ts';
import type { Place } from './watched.ts';

/** Where food is kept, and since when. */
export type Kept = Place & {
  /** No hand marks the change from one wait to the next, so that it may lie ahead. */
  readonly since: Instant;
};

/** Where a batch is kept now: the last of the places that it came to; null where nowhere yet. */
export function keptNow(
  state: DayState,
  index: PlanIndex,
  { places, now }: { places: readonly Place[]; now: Instant },
): Kept | null {
  const kept = keptIn(state, index, places).filter(({ since }) => since <= now);
  return kept.sort((a, b) => b.since - a.since)[0] ?? null;
}

/** All places in which a batch is kept and has not left. */
export function keptIn(state: DayState, index: PlanIndex, places: readonly Place[]): Kept[] {
  return places.flatMap((place): Kept[] => {
    if (passagesOf(state).get(place.task)?.finishedAt != null) return [];
    const since = beganAt(state, index, place.task);
    return since === null ? [] : [{ ...place, since }];
  });
}

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
