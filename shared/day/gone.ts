import type { BatchId } from '../kernel/index.ts';
import { after } from '../kernel/index.ts';
import { saleKey } from './happened.ts';
import { keptIn } from './holds.ts';
import { passagesOf } from './passage.ts';
import { groupBy, type PlanIndex } from './plan-index.ts';
import type { DayState } from './state.ts';
import { soldBy, thrownAt } from './thrown.ts';
import type { Watched } from './watched.ts';

/**
 * The batches of which nothing stands any more: empty, thrown out, kept for another day, or sold by
 * what the pass has counted, first in first out. What was counted after the time of a batch was
 * over came out of another: it is asked for till somebody says that it is thrown out.
 */
export function goneIn(
  index: PlanIndex,
  state: DayState,
  watched: ReadonlyMap<BatchId, Watched>,
): Set<BatchId> {
  const { emptied, carried, sold: counted } = state.happened;
  const gone = new Set<BatchId>([...emptied.keys(), ...carried.keys()]);
  if (counted.size === 0) return gone;
  const passages = passagesOf(state);
  const servedAt = ({ serve }: Watched) => passages.get(serve)?.startedAt ?? null;
  for (const [dish, batches] of groupBy([...watched.values()], ({ batch }) => batch.dish)) {
    const counts = index.plan.built.services.map(({ id }) => counted.get(saleKey(id, dish)) ?? 0);
    const sold = counts.reduce((sum, count) => sum + count, 0);
    let taken = 0;
    const served = batches.filter((each) => servedAt(each) !== null);
    for (const each of served.sort((a, b) => Number(servedAt(a)) - Number(servedAt(b)))) {
      const { id, portions } = each.batch;
      const most = Math.min(sold, soldInTime(index, state, each));
      const its = Math.min(portions, Math.max(0, most - taken));
      taken += its;
      if (its === portions) gone.add(id);
    }
  }
  return gone;
}

/** How many of its dish were counted till it was thrown out, or could be held no longer. */
function soldInTime(index: PlanIndex, state: DayState, { batch, places }: Watched): number {
  const thrown = thrownAt(state, batch.id);
  if (thrown !== null) return soldBy(state, batch.dish, thrown);
  if (state.happened.emptied.has(batch.id)) return Number.POSITIVE_INFINITY;
  const [last] = keptIn(state, index, places).sort((a, b) => b.since - a.since);
  return last ? soldBy(state, batch.dish, after(last.since, last.mostS)) : Number.POSITIVE_INFINITY;
}
