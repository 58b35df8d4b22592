import type { BatchId } from '../kernel/index.ts';
import { canonical } from '../kernel/index.ts';
import type { Mode } from '../schedule/index.ts';
import type { BuiltDay } from './built.ts';

type Edited = { readonly before: BuiltDay; readonly after: BuiltDay };

/** Batches that are new, or that are otherwise than they were. */
export function touchedIn({ before, after }: Edited): Set<BatchId> {
  const was = shapesOf(before);
  const is = shapesOf(after);
  return new Set([...is].flatMap(([id, shape]) => (was.get(id) === shape ? [] : [id])));
}

/** All that the schedule must know of each batch, as text. */
function shapesOf({ batches, tasks, problem }: BuiltDay): Map<BatchId, string> {
  const batchOf = new Map(tasks.map(({ id, batch }) => [id, batch]));
  const activities = grouped(problem.activities, ({ id }) => batchOf.get(id));
  const lags = grouped(problem.lags, ({ to }) => batchOf.get(to.activity));
  return new Map(
    batches.map(({ id, pieces, neededS }) => {
      const its = activities.get(id)?.map((each) => ({ ...each, modes: unordered(each.modes) }));
      return [id, canonical({ pieces, neededS, activities: its, lags: lags.get(id) })];
    }),
  );
}

/** Which way is preferred hangs on the rest of the day, and is none of the batch's own. */
function unordered(modes: readonly Mode[]) {
  const needs = (mode: Mode) =>
    mode.needs.map((need) => ({ ...need, oneOf: need.oneOf.toSorted() }));
  return modes
    .map((mode) => ({ ...mode, needs: needs(mode) }))
    .sort((a, b) => (a.id < b.id ? -1 : 1));
}

function grouped<Item, Key>(items: readonly Item[], keyOf: (item: Item) => Key): Map<Key, Item[]> {
  const groups = new Map<Key, Item[]>();
  for (const item of items) groups.set(keyOf(item), [...(groups.get(keyOf(item)) ?? []), item]);
  return groups;
}
