import type { Catalogue } from '../catalogue/index.ts';
import { chosenCut, chosenOptions, chosenSteps } from '../catalogue/index.ts';
import { addDays, must, resolveLocal, since } from '../kernel/index.ts';
import type { Kitchen } from '../kitchen/index.ts';
import { batchesOf, isRefused } from './batches.ts';
import type { Built } from './built.ts';
import { cureBreaches } from './cure-refusals.ts';
import { dayOf } from './day-of.ts';
import { portionsPerQuarter, QUARTER_S } from './demand.ts';
import { TrimLedger } from './donors.ts';
import { kindsOf } from './food.ts';
import { frameOf } from './frame.ts';
import { homesOf } from './homes.ts';
import { type Keeping, keepNothing } from './keeping-batches.ts';
import { lacks } from './lacks.ts';
import { kitchenBreaches, orderBreaches } from './limit-refusals.ts';
import type { Limits } from './limits.ts';
import { type Frame, type Order, ofDish } from './order.ts';
import type { OrderedBatch } from './ordered-batch.ts';
import type { PlanRefusal } from './refusal.ts';
import type { CookPlan, PlannedDish, Service } from './schema.ts';
import { instantsOf } from './services.ts';
import { unknownInPlan } from './unknown.ts';

/** What a kitchen makes things from, with and under. */
export type BuildOf = {
  readonly kitchen: Kitchen;
  readonly catalogue: Catalogue;
  readonly limits: Limits;
  /** What an edit of the running day leaves as it is; left out: nothing has begun. */
  readonly keeping?: Keeping;
};

/**
 * A cook plan worked out into batches, tasks, lists and the scheduling problem they make; or
 * everything that keeps it from being worked out. Whether hands and slots suffice for all of it at
 * once is the schedule's answer, not this one's.
 */
export function build(cookPlan: CookPlan, of: BuildOf): Built {
  const { kitchen, catalogue, limits, keeping = keepNothing } = of;
  const unknown = unknownInPlan(cookPlan, { kitchen, catalogue });
  const turned = cookPlan.services.flatMap(turnedRound);
  if (unknown.length > 0 || turned.length > 0) {
    const words = unknown.map((fault): PlanRefusal => ({ rule: 'unknown-word', ...fault }));
    return { ok: false, refusals: [...words, ...turned] };
  }
  const days = frameOf(cookPlan, kitchen, limits);
  if ([...days.hours.values()].every((spans) => spans.length === 0)) {
    const { day } = cookPlan;
    return { ok: false, refusals: [{ rule: 'nobody-there', eve: addDays(day, -1), day }] };
  }
  const orders = cookPlan.services.flatMap((service) =>
    service.dishes.map((planned) => orderOf(cookPlan, service, planned, days, catalogue)),
  );
  const frame = { ...days, homes: homesOf(orders, kitchen) };
  const refusals = kitchenBreaches(kitchen, catalogue, limits);
  const answers = orders.map((order) => ({
    order,
    answer: answerTo(order, frame, { catalogue, keeping }),
  }));
  const batches: OrderedBatch[] = [];
  const take = (answer: OrderedBatch[] | PlanRefusal[]) => {
    if (isRefused(answer)) refusals.push(...answer);
    else batches.push(...answer);
  };
  // What is bought first: the trim that it leaves is what the others are made of.
  for (const { order, answer } of answers) if (!order.cut.takenFrom) take(answer);
  const ledger = new TrimLedger(batches);
  for (const { order, answer } of answers) {
    if (order.cut.takenFrom) take(isRefused(answer) ? answer : ledger.claim(answer));
  }
  if (refusals.length > 0) return { ok: false, refusals };
  return { ok: true, day: dayOf(cookPlan, { frame, catalogue, orders, batches }) };
}

function answerTo(
  order: Order,
  frame: Frame,
  { catalogue, keeping }: { readonly catalogue: Catalogue; readonly keeping: Keeping },
): OrderedBatch[] | PlanRefusal[] {
  const lacking = [
    ...lacks(order, frame, catalogue),
    ...orderBreaches(order, frame),
    ...cureBreaches(order, frame, catalogue),
    ...soldAfterClosing(order),
  ];
  return lacking.length > 0 ? lacking : batchesOf(order, frame, keeping);
}

/** Wall times of one kind compare as text. */
function turnedRound({ name, opens, closes }: Service): PlanRefusal[] {
  return opens < closes ? [] : [{ rule: 'closes-before-opening', service: name, opens, closes }];
}

function soldAfterClosing(order: Order): PlanRefusal[] {
  const { sales } = order.planned;
  const open = order.demand.length;
  if (sales.by === 'shape' || sales.portions.length <= open) return [];
  return [{ rule: 'sales-after-closing', ...ofDish(order), counted: sales.portions.length, open }];
}

function orderOf(
  cookPlan: CookPlan,
  service: Service,
  planned: PlannedDish,
  { kitchen, origin }: Pick<Frame, 'kitchen' | 'origin'>,
  catalogue: Catalogue,
): Order {
  const dish = find(catalogue.dishes, planned.dish);
  const route = find(catalogue.routes, dish.route);
  const chosen = chosenOptions(route, planned.choices);
  const cut = find(catalogue.cuts, chosenCut(route, chosen));
  const steps = chosenSteps(route, chosen);
  const { opensAt, closesAt } = instantsOf(cookPlan, service, kitchen.zone);
  const quarters = Math.max(1, Math.ceil(since(opensAt, closesAt) / QUARTER_S));
  const { id, name, opens } = service;
  return {
    service: { id, name, opens, opensS: since(origin, opensAt) },
    planned,
    dish,
    cut,
    route,
    chosen,
    steps,
    kinds: kindsOf(cut, steps),
    demand: portionsPerQuarter(planned.sales, quarters),
    readyAt: (planned.batches ?? []).map(({ number, portions, ready }) => {
      const { at } = resolveLocal(cookPlan.day, ready, kitchen.zone);
      return { number, portions, neededS: since(origin, at) };
    }),
  };
}

function find<Item extends { readonly id: string }>(items: readonly Item[], id: string): Item {
  return must(
    items.find((item) => item.id === id),
    id,
  );
}
