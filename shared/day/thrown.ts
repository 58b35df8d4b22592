import type { BatchId, Instant } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import { passagesOf } from './passage.ts';
import { indexOf } from './plan-index.ts';
import type { DayState } from './state.ts';
import { watchedIn } from './watched.ts';

/**
 * Which share of what a batch gives was thrown out: all that was not sold of it by then, by what
 * the pass had counted, first in first out (common practice, no source). Nought where nobody said
 * so.
 */
export function thrownShare(state: DayState, id: BatchId): number {
  const at = thrownAt(state, id);
  if (at === null) return 0;
  const index = indexOf(must(state.plan, 'a plan'));
  const { dish, portions } = must(index.batches.get(id), id);
  const passages = passagesOf(state);
  const served = [...watchedIn(index).values()]
    .flatMap(({ batch, serve }) => {
      const startedAt = passages.get(serve)?.startedAt ?? null;
      const isBefore = startedAt !== null && startedAt <= at && batch.dish === dish;
      return isBefore ? [{ batch, startedAt }] : [];
    })
    .sort((a, b) => a.startedAt - b.startedAt);
  let sold = soldBy(state, dish, at);
  for (const { batch } of served) {
    const its = Math.min(sold, batch.portions);
    if (batch.id === id) return portions > 0 ? (portions - its) / portions : 1;
    sold -= its;
  }
  return 1;
}

/**
 * Whether it stood at the pass till it was thrown out and nobody counted what was sold of its dish:
 * then all of it is reckoned as thrown, and some may have been served all the same.
 */
export function mayHaveFed(state: DayState, id: BatchId): boolean {
  const at = thrownAt(state, id);
  if (at === null) return false;
  const index = indexOf(must(state.plan, 'a plan'));
  const { dish } = must(index.batches.get(id), id);
  const { serve } = must(watchedIn(index).get(id), id);
  const stoodAt = passagesOf(state).get(serve)?.startedAt ?? null;
  return stoodAt !== null && stoodAt < at && soldBy(state, dish, at) === 0;
}

/** When somebody said that what is left of it goes: at a check, or as nothing of it is kept. */
export function thrownAt({ checks, happened, story }: DayState, id: BatchId): Instant | null {
  const said = checks.find(
    (entry) =>
      entry.kind === 'correctionRecorded' &&
      entry.action === 'discard' &&
      'batch' in entry.on &&
      entry.on.batch === id,
  );
  if (said) return said.at;
  if (happened.carried.get(id) !== 0) return null;
  return story.findLast((told) => told.kind === 'leftCarriedOver' && told.batch === id)?.at ?? null;
}

/** How many of a dish were counted till then: the last count of each service. */
export function soldBy({ story }: DayState, dish: string, at: Instant): number {
  const counts = new Map<string, number>();
  for (const told of story) {
    if (told.kind === 'portionsSold' && told.dish === dish && told.at <= at) {
      counts.set(told.service, told.sold);
    }
  }
  return [...counts.values()].reduce((sum, count) => sum + count, 0);
}
