import type { Command, Live } from '../day/index.ts';
import { closingNow, passagesOf, soldAt, spellOf } from '../day/index.ts';
import type { BatchId, DishId, Instant, Kilograms, ServiceId, Text } from '../kernel/index.ts';
import { kilograms, must } from '../kernel/index.ts';
import type { Batch } from '../plan/index.ts';
import { leftInPans } from './pass-page.ts';
import { passPan } from './pass-pan.ts';

/** What stands between a day and its closing: what is left of it, and what has not ended. */
export type DayEnd = {
  /** Dishes of which something is left, or was, till somebody said where it goes. */
  readonly dishes: readonly DishEnd[];
  /** Tasks of hands that have begun and not ended. */
  readonly running: readonly { readonly title: Text; readonly batch: Text }[];
  /** Batches that are under way and go on, and batches that never began. */
  readonly goesOn: readonly Text[];
  readonly neverBegan: readonly Text[];
  readonly smokersDown: readonly Text[];
};

export type DishEnd = {
  readonly dish: DishId;
  readonly name: Text;
  readonly pans: readonly PanEnd[];
};

export type ServiceEnd = {
  readonly id: ServiceId;
  readonly name: Text;
  readonly closesAt: Instant;
};

export type PanEnd = {
  readonly batch: BatchId;
  readonly name: Text;
  /** What it was made for: till that closes it may yet be sold there. */
  readonly service: ServiceEnd;
  /** Portions, as the pass has counted; none once somebody has said where they go. */
  readonly left: number;
  /** What they weigh, as planned. */
  readonly weightKg: Kilograms;
  /** Null where nothing limits it. */
  readonly heldUntil: Instant | null;
  /** So much is kept for another day, nought where it is thrown out; null till somebody says. */
  readonly keptKg: Kilograms | null;
};

/** The day's end as things stand at the live day's now. */
export function dayEnd(live: Live): DayEnd {
  const { index, state } = live;
  const { batches, tasks } = index.plan.built;
  const { goesOn, left } = closingNow(state);
  const nameOf = (id: BatchId): Text => index.groups.get(id)?.name ?? { en: id };
  const passages = passagesOf(state);
  const isRunning = (id: (typeof tasks)[number]['id']) => {
    const passage = passages.get(id);
    return passage?.startedAt != null && passage.finishedAt === null;
  };
  const dishes = [...new Set(batches.map(({ dish }) => dish))]
    .map((dish) => dishEnd(live, dish))
    .filter(({ pans }) => pans.length > 0);
  // What somebody has to say the end of, or has, does not go on by itself.
  const settled = new Set(dishes.flatMap(({ pans }) => pans.map(({ batch }) => batch)));
  return {
    dishes,
    running: tasks
      .filter(({ id, work }) => work === 'hands' && isRunning(id))
      .map(({ title, batch }) => ({ title, batch: nameOf(batch) })),
    goesOn: goesOn.filter((id) => !settled.has(id)).map(nameOf),
    neverBegan: left.map(nameOf),
    smokersDown: index.plan.kitchen.smokers
      .filter(({ id }) => spellOf(state, id) !== null)
      .map(({ name }) => name),
  };
}

function dishEnd(live: Live, dish: DishId): DishEnd {
  const { built, catalogue } = live.index.plan;
  const batches = built.batches.filter((batch) => batch.dish === dish);
  const pans = batches.map((batch) => passPan(live, batch));
  const sold = built.services.reduce((sum, { id }) => sum + soldAt(live.state, id, dish), 0);
  const left = new Map(
    leftInPans({ pans, soldBefore: 0, sold }).map(({ pan, left: n }) => [pan.batch, n]),
  );
  const ofServices = new Map(built.services.map((each) => [each.id, each]));
  const known = catalogue.dishes.find(({ id }) => id === dish);
  return {
    dish,
    name: must(known, dish).name,
    pans: batches.flatMap((batch, i): PanEnd[] => {
      const keptKg = live.state.happened.carried.get(batch.id) ?? null;
      const portions = left.get(batch.id) ?? 0;
      if (portions === 0 && keptKg === null) return [];
      const { heldUntil } = must(pans[i], batch.id);
      const service = serviceEnd(must(ofServices.get(batch.service), batch.service));
      return [{ ...panEnd(batch, portions), service, heldUntil, keptKg }];
    }),
  };
}

const serviceEnd = ({ id, name, closesAt }: ServiceEnd): ServiceEnd => ({ id, name, closesAt });

const panEnd = ({ id, name, servedKg, portions }: Batch, left: number) => ({
  batch: id,
  name,
  left,
  weightKg: kilograms((servedKg * left) / portions),
});

/** The end with one more word of this screen over it on where something goes. */
export function layCarried(
  end: DayEnd,
  { batch, weightKg }: Extract<Command, { kind: 'carryOver' }>,
): DayEnd {
  const laid = (pan: PanEnd): PanEnd =>
    pan.batch === batch ? { ...pan, left: 0, keptKg: weightKg } : pan;
  return { ...end, dishes: end.dishes.map((each) => ({ ...each, pans: each.pans.map(laid) })) };
}
