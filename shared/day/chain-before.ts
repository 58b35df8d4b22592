import type { Seconds, TaskId } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import { modeOf, placementOf } from './arrangement.ts';
import type { Live } from './live.ts';
import { passagesOf } from './passage.ts';
import { isPrecedence } from './ready.ts';

/**
 * What has yet to be done before a task and with it, first thing first: work of hands, sets and
 * rests that have not begun, and the task itself.
 */
export function chainBefore(live: Live, task: TaskId): TaskId[] {
  const { index, state } = live;
  const passages = passagesOf(state);
  const found = new Set<TaskId>();
  const visit = (id: TaskId) => {
    const isCook = ['fire', 'place'].includes(must(index.tasks.get(id), id).work);
    if (found.has(id) || isCook || passages.get(id)?.startedAt != null) return;
    found.add(id);
    for (const lag of index.lagsInto.get(id) ?? []) {
      if (lag.to.end === 'start' && isPrecedence(lag)) visit(lag.from.activity);
    }
  };
  visit(task);
  return [...found].sort((a, b) => live.timesOf(a).startS - live.timesOf(b).startS);
}

type Asked = {
  /** What begins so much after the last of the chain, and has to find its place free then. */
  readonly withIt: ReadonlyMap<TaskId, Seconds>;
  /** Nothing begins before this, however early it could. */
  readonly from: (task: TaskId) => number;
};

/**
 * When each of a chain could begin at the soonest, while all else is done when it is now expected
 * to be; and what of all else holds up the last of it, if anything but the clock.
 */
export function soonestStarts(
  live: Live,
  chain: readonly TaskId[],
  { withIt, from }: Asked,
): { readonly startsS: ReadonlyMap<TaskId, number>; readonly boundBy: TaskId | null } {
  const startsS = new Map<TaskId, number>();
  const boundBy = new Map<TaskId, TaskId>();
  const last = chain.at(-1);
  for (const task of chain) {
    let soonestS = Math.max(live.nowS, from(task));
    const parts = task === last ? [[task, 0] as const, ...withIt] : [[task, 0] as const];
    for (const [part, laterS] of parts) {
      for (const lag of live.leastLagsInto(part)) {
        const before = lag.from.activity;
        if (lag.to.end !== 'start' || before === task || withIt.has(before)) continue;
        const startS = startsS.get(before) ?? live.timesOf(before).startS;
        const lasts = lag.from.end === 'start' ? 0 : lastsS(live, before);
        const atS = startS + lasts + lag.minS - laterS;
        if (atS <= soonestS) continue;
        soonestS = atS;
        boundBy.set(task, before);
      }
    }
    startsS.set(task, soonestS);
  }
  let holdsUp = last && boundBy.get(last);
  while (holdsUp && startsS.has(holdsUp)) holdsUp = boundBy.get(holdsUp);
  return { startsS, boundBy: holdsUp ?? null };
}

/** A set or a rest lasts no longer than it must, if somebody comes for it. */
function lastsS(live: Live, task: TaskId): number {
  const { startS, endS } = live.timesOf(task);
  const { length } = modeOf(live.index, placementOf(live.state, live.index, task));
  const isOver = passagesOf(live.state).get(task)?.finishedAt != null;
  return length.kind === 'wait' && !isOver ? length.minS : endS - startS;
}
