import type { TaskId } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import type { Lag } from '../schedule/index.ts';
import { modeOf, placementOf } from './arrangement.ts';
import type { Live } from './live.ts';
import { passagesOf } from './passage.ts';
import type { PlanIndex } from './plan-index.ts';
import { indexOf } from './plan-index.ts';
import type { DayState } from './state.ts';

/** The lags by which one activity must come before another. */
export const isPrecedence = ({ minS }: Lag) => minS !== undefined && minS >= 0;

/**
 * The first work of hands that must happen before this and has not, straight before it or through
 * what nobody taps. Times are a person's call; the order is not.
 */
export function undoneBefore(state: DayState, task: TaskId): TaskId | null {
  return state.plan ? undone(state, indexOf(state.plan), task) : null;
}

function undone(state: DayState, index: PlanIndex, task: TaskId): TaskId | null {
  const passages = passagesOf(state);
  for (const { from, to, ...lag } of index.lagsInto.get(task) ?? []) {
    if (to.end !== 'start' || lag.minS === undefined || lag.minS < 0) continue;
    const before = from.activity;
    const passage = must(passages.get(before), before);
    if (must(index.tasks.get(before), before).work === 'hands') {
      const happened = from.end === 'start' ? passage.startedAt : passage.finishedAt;
      if (happened === null) return before;
    } else if (passage.startedAt === null) {
      const deeper = undone(state, index, before);
      if (deeper) return deeper;
    }
  }
  return null;
}

/** Work of hands that has begun since, straight after this or through what nobody taps. */
export function begunAfter(state: DayState, task: TaskId): TaskId | null {
  if (!state.plan) return null;
  const index = indexOf(state.plan);
  const passages = passagesOf(state);
  for (const lag of index.lagsOutOf.get(task) ?? []) {
    if (lag.from.end !== 'end' || lag.to.end !== 'start' || !isPrecedence(lag)) continue;
    const next = lag.to.activity;
    if (must(index.tasks.get(next), next).work !== 'hands') {
      const further = begunAfter(state, next);
      if (further) return further;
    } else if (passages.get(next)?.startedAt != null) {
      return next;
    }
  }
  return null;
}

/**
 * Whether the task may start now: nothing must come first, the set or rest before it has had its
 * least time, and a fire before it may be done, which is from the low end of its range on.
 */
export function mayStart(live: Live, task: TaskId): boolean {
  const { state, index } = live;
  if (undoneBefore(state, task)) return false;
  return (index.lagsInto.get(task) ?? []).every((lag) => {
    if (lag.to.end !== 'start' || lag.from.end !== 'end' || !isPrecedence(lag)) return true;
    return soonestEndS(live, lag.from.activity) + (lag.minS ?? 0) <= live.nowS;
  });
}

function soonestEndS(live: Live, task: TaskId): number {
  const { state, index } = live;
  const { work } = must(index.tasks.get(task), task);
  if (work === 'hands' || work === 'place') return live.timesOf(task).endS;
  const { length } = modeOf(index, placementOf(state, index, task));
  if (length.kind === 'work') return live.endRangeOf(task).lowS;
  return live.timesOf(task).startS + length.minS;
}
