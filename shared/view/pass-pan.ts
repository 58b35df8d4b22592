import type { Live } from '../day/index.ts';
import {
  barsOf,
  emptiedAt,
  keptNow,
  passagesOf,
  soldBy,
  thrownAt,
  watchedIn,
} from '../day/index.ts';
import { after, must } from '../kernel/index.ts';
import type { Batch } from '../plan/index.ts';
import type { PassPan } from './pass-dish.ts';
import { readyRange } from './ready-range.ts';

/** A batch as the pass has it. */
export function passPan(live: Live, batch: Batch): PassPan {
  const { state, index, now } = live;
  const { tasks, serve, places } = must(watchedIn(index).get(batch.id), batch.id);
  const { piece } = must(tasks[0], batch.id);
  const served = tasks.findIndex(({ id }) => id === serve);
  const hands = tasks.slice(0, served).findLast(({ work }) => work === 'hands');
  const { startedAt } = must(passagesOf(state).get(serve), serve);
  const hold = keptNow(state, index, { places, now });
  const bar = barsOf(state, now).get(batch.id);
  const thrown = thrownAt(state, batch.id);
  const endedAt = thrown ?? (bar ? (bar.check.failed?.at ?? bar.check.lateAt) : null);
  const range = readyRange(live, serve);
  return {
    batch: batch.id,
    name: batch.name,
    service: batch.service,
    pieces: batch.pieces,
    piece,
    portions: batch.portions,
    stage: startedAt !== null ? 'ready' : hold ? 'held' : 'coming',
    readyAt: startedAt ?? live.instantOf(range.likelyS),
    readyLowAt: startedAt ?? live.instantOf(range.lowS),
    readyHighAt: startedAt ?? live.instantOf(range.highS),
    setOut: must(hands ?? tasks[served], serve).title,
    heldUntil: hold && after(hold.since, hold.mostS),
    barred: bar ? { why: bar.why, check: bar.check.on.kind } : null,
    soldTill: endedAt === null ? null : soldBy(state, batch.dish, endedAt),
    isEmptied: emptiedAt(state, batch.id) !== null || state.happened.carried.has(batch.id),
  };
}
