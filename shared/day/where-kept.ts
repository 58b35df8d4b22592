import type { BatchId, Text } from '../kernel/index.ts';
import { kitchenResource } from '../plan/index.ts';
import { keptNow } from './holds.ts';
import type { Live } from './live.ts';
import { watchedIn } from './watched.ts';

/** The cabinet or the cooler that a batch is kept in to be sold; null where it is in none now. */
export function whereKept({ state, index, now }: Live, batch: BatchId): Text | null {
  const places = watchedIn(index).get(batch)?.places ?? [];
  const kept = keptNow(state, index, { places, now });
  const { cabinets, coolers } = index.plan.kitchen;
  const uses = kept ? (index.placements.get(kept.task)?.uses ?? []) : [];
  for (const { resource } of uses) {
    const thing = kitchenResource(resource);
    if (thing.kind === 'cabinet') return named(cabinets, thing.cabinet);
    if (thing.kind === 'cooler') return named(coolers, thing.cooler);
  }
  return null;
}

const named = (all: readonly { readonly id: string; readonly name: Text }[], id: string) =>
  all.find((each) => each.id === id)?.name ?? null;
