import type { Live } from '../day/index.ts';
import { modeOf, placementOf } from '../day/index.ts';
import type { Seconds, TaskId } from '../kernel/index.ts';
import { must, seconds } from '../kernel/index.ts';

/** Work of hands that must have ended, and the least time of what nobody does in between. */
export type Before = { readonly task: TaskId; readonly waitS: Seconds };

/**
 * What a task follows, seen through the smoke and the sets in between. With it a sheet stays right
 * when the day runs late and no screen moves the times.
 */
export function comesAfter(live: Live, task: TaskId): Before[] {
  const longest = new Map<TaskId, Seconds>();
  follow(live, task, 0, longest);
  return [...longest].map(([before, waitS]) => ({ task: before, waitS }));
}

function follow(live: Live, to: TaskId, waitS: number, longest: Map<TaskId, Seconds>): void {
  const { index } = live;
  for (const { from, to: end, minS } of index.lagsInto.get(to) ?? []) {
    if (from.end !== 'end' || end.end !== 'start' || minS === undefined || minS < 0) continue;
    const before = must(index.tasks.get(from.activity), from.activity);
    const totalS = seconds(waitS + minS);
    if (before.work !== 'hands') follow(live, before.id, totalS + leastS(live, before.id), longest);
    else if (totalS >= (longest.get(before.id) ?? 0)) longest.set(before.id, totalS);
  }
}

/** A set or a rest may be cut down to its least; a fire takes its time. */
function leastS(live: Live, task: TaskId): number {
  const { length } = modeOf(live.index, placementOf(live.state, live.index, task));
  if (length.kind === 'wait') return length.minS;
  const { startS, endS } = live.timesOf(task);
  return endS - startS;
}
