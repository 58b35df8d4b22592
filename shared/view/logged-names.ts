import type { Live, Told } from '../day/index.ts';
import { everIn, slotNamedEver, slotsOf } from '../day/index.ts';
import type { BatchId, CutId, DishId, SlotId, SmokerId, TaskId, Text } from '../kernel/index.ts';
import type { SlotName } from '../plan/index.ts';

/** What was done to a task. */
export type Deed = { readonly title: Text; readonly batch: Text };

type ReadingTold = Extract<Told, { kind: 'temperatureRead' }>;

/** A task may be gone from the plan since; then its id must do. */
export function deedOn({ index }: Live, id: TaskId): Deed {
  const task = index.tasks.get(id);
  const batch = task && index.groups.get(task.batch)?.name;
  return { title: task?.title ?? { en: id }, batch: batch ?? { en: id } };
}

/** What was read: of meat where it lay then, and which load, where its batch has several. */
export function placeRead(live: Live, { where, at }: Pick<ReadingTold, 'where' | 'at'>) {
  if (where.kind === 'air') return { where: smokerOf(live, where.smoker), load: null, slot: null };
  const { state, index } = live;
  const batch = index.tasks.get(where.stay)?.batch;
  const loads = [...index.tasks.values()].filter((each) => {
    return each.work === 'place' && each.batch === batch;
  });
  const load = loads.length > 1 ? loads.findIndex(({ id }) => id === where.stay) + 1 : null;
  const [lay] = index.placements.has(where.stay) ? slotsOf(state, index, where.stay, at) : [];
  const slot = lay ? slotOf(live, lay.slot) : null;
  return { where: deedOn(live, where.stay).batch, load, slot };
}

/** What a smoker is called, or was; by its id where no kitchen of this day has had it. */
export const smokerOf = (live: Live, id: SmokerId): Text =>
  everIn(live, ({ smokers }) => smokers.find((smoker) => smoker.id === id))?.name ?? { en: id };
/** What a dish is called; by its id where the plan no longer has it. */
export const dishOf = ({ index }: Live, id: DishId): Text =>
  index.plan.catalogue.dishes.find((dish) => dish.id === id)?.name ?? { en: id };
/** The same of a cut. */
export const cutOf = ({ index }: Live, id: CutId): Text =>
  index.plan.catalogue.cuts.find((cut) => cut.id === id)?.name ?? { en: id };
/** The same of a batch. */
export const batchOf = ({ index }: Live, id: BatchId): Text =>
  index.groups.get(id)?.name ?? { en: id };

/** A slot with its smoker, also one that was taken away since. */
export const slotOf = (live: Live, slot: SlotId): SlotName => slotNamedEver(live, slot);
