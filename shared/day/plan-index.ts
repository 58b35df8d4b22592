import type { Step } from '../catalogue/index.ts';
import type { BatchId, PersonId, SlotId, SmokerId, TaskId, Text } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import type { Kitchen } from '../kitchen/index.ts';
import { findSlot } from '../kitchen/index.ts';
import type {
  Batch,
  PersonName,
  SlotName,
  SmokerName,
  Task,
  TaskName,
  TubLine,
} from '../plan/index.ts';
import type { Activity, Lag, Placement } from '../schedule/index.ts';
import type { AdoptedPlan } from './adopted-plan.ts';

/** An adopted plan, to be looked things up in. */
export type PlanIndex = {
  readonly plan: AdoptedPlan;
  readonly tasks: ReadonlyMap<TaskId, Task>;
  readonly batches: ReadonlyMap<BatchId, Batch>;
  /** Whatever tasks belong to: a batch, or a thing of the kitchen that is kept up. */
  readonly groups: ReadonlyMap<BatchId, Pick<Batch, 'id' | 'name' | 'service'>>;
  readonly activities: ReadonlyMap<TaskId, Activity>;
  readonly placements: ReadonlyMap<TaskId, Placement>;
  readonly lagsInto: ReadonlyMap<TaskId, readonly Lag[]>;
  readonly lagsOutOf: ReadonlyMap<TaskId, readonly Lag[]>;
  /** The tubs that are full once a task is done: it is the one that leaves its batch trimmed. */
  readonly tubsAfter: ReadonlyMap<TaskId, readonly TubLine[]>;
};

const indexes = new WeakMap<AdoptedPlan, PlanIndex>();

/** The index of a plan, made once for each plan. */
export function indexOf(plan: AdoptedPlan): PlanIndex {
  const known = indexes.get(plan);
  if (known) return known;
  const { tasks, batches, upkeep, problem } = plan.built;
  const index: PlanIndex = {
    plan,
    tasks: new Map(tasks.map((task) => [task.id, task])),
    batches: new Map(batches.map((batch) => [batch.id, batch])),
    groups: new Map([...batches, ...upkeep].map((group) => [group.id, group])),
    activities: new Map(problem.activities.map((activity) => [activity.id, activity])),
    placements: new Map(plan.schedule.placements.map((placed) => [placed.activity, placed])),
    lagsInto: groupBy(problem.lags, (lag) => lag.to.activity),
    lagsOutOf: groupBy(problem.lags, (lag) => lag.from.activity),
    tubsAfter: tubsFilled(plan),
  };
  indexes.set(plan, index);
  return index;
}

function tubsFilled({ catalogue, built }: AdoptedPlan): Map<TaskId, TubLine[]> {
  const tubsOf = groupBy(built.tubs, ({ batch }) => batch);
  const routeOf = new Map(built.batches.map(({ id, route }) => [id, route]));
  const trims = new Set(
    catalogue.routes.flatMap(({ id, steps }) =>
      steps.filter(({ leaves }) => leaves === 'trimmed').map((step) => `${id} ${step.id}`),
    ),
  );
  return new Map(
    built.tasks.flatMap(({ id, batch, step }) => {
      const tubs = trims.has(`${routeOf.get(batch)} ${step}`) ? tubsOf.get(batch) : undefined;
      return tubs ? [[id, tubs] as const] : [];
    }),
  );
}

/** @example groupBy([1, 2, 3], (n) => n % 2).get(1) //=> [1, 3] */
export function groupBy<Key, Item>(items: readonly Item[], keyOf: (item: Item) => Key) {
  const groups = new Map<Key, Item[]>();
  for (const item of items) {
    const group = groups.get(keyOf(item));
    if (group) group.push(item);
    else groups.set(keyOf(item), [item]);
  }
  return groups;
}

/** A task with the words on its line. */
export function taskName(index: PlanIndex, id: TaskId): TaskName {
  const { title, short } = must(index.tasks.get(id), id);
  return short ? { id, title, short } : { id, title };
}

/** A member of the crew by name, or null for somebody not on the list. */
export function personName(kitchen: Kitchen, id: PersonId | null): PersonName | null {
  const person = kitchen.crew.find((member) => member.id === id);
  return person ? { id: person.id, name: person.name } : null;
}

/** A smoker by name, or null where there is no such smoker. */
export function smokerName(kitchen: Kitchen, id: SmokerId): SmokerName | null {
  const smoker = kitchen.smokers.find((each) => each.id === id);
  return smoker ? { id, name: smoker.name } : null;
}

/** What is done to a batch, in the order of its route; nothing to what no batch of the day is. */
export function stepsOf({ batches, plan }: PlanIndex, batch: BatchId): readonly Step[] {
  const route = batches.get(batch)?.route;
  return plan.catalogue.routes.find(({ id }) => id === route)?.steps ?? [];
}

/** A rack with the names it goes by, or null where there is no such rack. */
export function slotName(kitchen: Kitchen, id: SlotId): SlotName | null {
  const slot = findSlot(kitchen, id);
  return slot && { id, smoker: slot.smoker.name, rack: String(slot.number) };
}

/** A batch of the day, or what another day kept, by name; by its id where neither is known. */
export function batchNamed(
  {
    leftovers,
  }: { readonly leftovers: readonly { readonly batch: BatchId; readonly name: Text }[] },
  index: PlanIndex,
  id: BatchId,
): Text {
  const own = index.groups.get(id) ?? leftovers.find(({ batch }) => batch === id);
  return own?.name ?? { en: id };
}
