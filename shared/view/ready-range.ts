import type { Live } from '../day/index.ts';
import { modeOf, placementOf } from '../day/index.ts';
import type { Seconds, TaskId } from '../kernel/index.ts';
import { must, seconds } from '../kernel/index.ts';

/** When something can begin, by how long the cook before it may take. */
export type ReadyRange = {
  readonly lowS: Seconds;
  readonly likelyS: Seconds;
  readonly highS: Seconds;
};

/**
 * When all that a batch waits for before it is sold has happened: likely as the day stands; at the
 * earliest after a short cook (P10) and the shortest rest, at the latest after a long one (P90)
 * where the rest does not make up for it.
 */
export function readyRange(live: Live, serve: TaskId): ReadyRange {
  const before = lastsBefore(live, serve);
  const likelyS = Math.max(live.nowS, ...before.map((id) => live.timesOf(id).endS));
  const doubts = before.flatMap((id) => doubtsBehind(live, id, 0));
  const latest = (ends: readonly number[]) => Math.max(live.nowS, ...ends);
  const lowS = Math.min(likelyS, latest(doubts.map(({ lowS: low, restS }) => low + restS)));
  const highS = Math.max(likelyS, latest(doubts.map(({ highS: high, restS }) => high + restS)));
  return {
    lowS: seconds(doubts.length > 0 ? lowS : likelyS),
    likelyS: seconds(likelyS),
    highS: seconds(highS),
  };
}

/** The tasks that must have ended just before. */
function lastsBefore(live: Live, task: TaskId): TaskId[] {
  return (live.index.lagsInto.get(task) ?? [])
    .filter((lag) => lag.from.end === 'end' && lag.to.end === 'start' && lag.minS !== undefined)
    .map(({ from }) => from.activity);
}

type Doubt = { readonly lowS: number; readonly highS: number; readonly restS: number };

/** The stages of a cook behind a task, each with the least that must come after it. */
function doubtsBehind(live: Live, id: TaskId, restS: number): Doubt[] {
  const task = must(live.index.tasks.get(id), id);
  const { stage, startS, endS } = live.timeline.times(id);
  if (stage === 'done') return [];
  if (task.work === 'fire') return [{ ...live.endRangeOf(id), restS }];
  const { length } = modeOf(live.index, placementOf(live.state, live.index, id));
  const leastS = length.kind === 'wait' ? length.minS : endS - startS;
  return lastsBefore(live, id).flatMap((before) => doubtsBehind(live, before, restS + leastS));
}
