import type { BatchId, DishId, TaskId } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import type { Batch } from '../plan/index.ts';
import type { AdoptedPlan } from './adopted-plan.ts';
import { indexOf, type PlanIndex } from './plan-index.ts';
import { watchedIn } from './watched.ts';

/**
 * What the law asks to be named of a batch: that of its cut, its dish, each mix that goes on or
 * into it, and, where it is made of trim, what the pieces had on them when it was cut off.
 */
export function allergensOf(plan: AdoptedPlan, id: BatchId): readonly string[] {
  return must(allergensIn(indexOf(plan)).get(id), id);
}

const known = new WeakMap<PlanIndex, ReadonlyMap<BatchId, readonly string[]>>();

/** Worked out once for each plan: the pass names them with every tap. */
function allergensIn(index: PlanIndex): ReadonlyMap<BatchId, readonly string[]> {
  const made = known.get(index);
  if (made) return made;
  const named = new Map(
    [...index.batches.values()].map((batch) => [batch.id, allergensFor(index, batch)]),
  );
  known.set(index, named);
  return named;
}

function allergensFor(index: PlanIndex, batch: Batch): readonly string[] {
  const { plan } = index;
  const own = tasksOf(index, batch.id);
  const dish = plan.catalogue.dishes.find((each) => each.id === batch.dish);
  return unique([
    ...ofCut(plan, batch),
    ...ofMixes(plan, own),
    ...(dish?.allergens ?? []),
    ...donorsOf(index, batch).flatMap((donor) => [
      ...ofCut(plan, donor),
      ...ofMixes(plan, beforeTrimmed(index, donor)),
    ]),
  ]);
}

/** The same of a dish, over all its batches of the day. */
export function allergensOfDish(plan: AdoptedPlan, dish: DishId): readonly string[] {
  const batches = plan.built.batches.filter((batch) => batch.dish === dish);
  return unique(batches.flatMap(({ id }) => allergensOf(plan, id)));
}

const unique = (words: readonly string[]) => [...new Set(words)];

const tasksOf = (index: PlanIndex, id: BatchId) => must(watchedIn(index).get(id), id).tasks;

const ofCut = ({ catalogue }: AdoptedPlan, { cut }: Batch) =>
  catalogue.cuts.find(({ id }) => id === cut)?.allergens ?? [];

type Mixed = { readonly mix?: { readonly mix: string } };

const ofMixes = ({ catalogue }: AdoptedPlan, tasks: readonly Mixed[]): string[] =>
  tasks.flatMap(({ mix }) => {
    const known = catalogue.mixes.find(({ id }) => id === mix?.mix);
    return (known?.parts ?? []).flatMap(({ allergens }) => allergens);
  });

/** Batches whose trim it may be made of. */
function donorsOf({ plan }: PlanIndex, { cut, bought }: Batch): Batch[] {
  const taken = plan.catalogue.cuts.find(({ id }) => id === cut)?.takenFrom;
  if (bought !== null || !taken) return [];
  return plan.built.batches.filter((batch) => taken.some((each) => each.cut === batch.cut));
}

function beforeTrimmed(index: PlanIndex, batch: Batch): readonly Mixed[] {
  const { catalogue } = index.plan;
  const route = catalogue.routes.find(({ id }) => id === batch.route);
  const trims = new Set(
    route?.steps.filter(({ leaves }) => leaves === 'trimmed').map(({ id }) => id as string),
  );
  const endS = (id: TaskId) => must(index.placements.get(id), id).endS;
  const own = tasksOf(index, batch.id);
  const trimmed = own.filter(({ step }) => trims.has(step)).map(({ id }) => endS(id));
  // A route that does not say when it is trimmed may have anything on it by then.
  const lastS = trimmed.length > 0 ? Math.max(...trimmed) : Number.POSITIVE_INFINITY;
  return own.filter(({ id }) => endS(id) <= lastS);
}
