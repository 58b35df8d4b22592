import type { BatchId } from '../kernel/index.ts';
import { saleKey } from './happened.ts';
import { passagesOf } from './passage.ts';
import { groupBy, type PlanIndex } from './plan-index.ts';
import type { DayState } from './state.ts';
import type { Watched } from './watched.ts';

/**
 * The batches of which nothing stands any more: empty, thrown out, kept for another day, or sold by
 * what the pass has counted, first in first out.
 */
export function goneIn(
  { plan }: PlanIndex,
  state: DayState,
  watched: ReadonlyMap<BatchId, Watched>,
): Set<BatchId> {
  const { emptied, carried, sold } = state.happened;
  const gone = new Set<BatchId>([...emptied.keys(), ...carried.keys()]);
  if (sold.size === 0) return gone;
  const passages = passagesOf(state);
  const servedAt = ({ serve }: Watched) => passages.get(serve)?.startedAt ?? null;
  for (const [dish, batches] of groupBy([...watched.values()], ({ batch }) => batch.dish)) {
    const counts = plan.built.services.map(({ id }) => sold.get(saleKey(id, dish)) ?? 0);
    let left = counts.reduce((sum, count) => sum + count, 0);
    const served = batches.filter((each) => servedAt(each) !== null);
    for (const each of served.sort((a, b) => Number(servedAt(a)) - Number(servedAt(b)))) {
      left -= each.batch.portions;
      if (left >= 0) gone.add(each.batch.id);
    }
  }
  return gone;
}
