import type { Catalogue } from '../catalogue/index.ts';
import { chosenOptions, chosenSteps } from '../catalogue/index.ts';
import type { Instant } from '../kernel/index.ts';
import { must, resolveLocal, since } from '../kernel/index.ts';
import type { Kitchen } from '../kitchen/index.ts';
import { activitiesOf, aimsOf, goalOf, lagsOf } from './activities.ts';
import { batchesOf, isRefused, type OrderedBatch } from './batches.ts';
import type { Built, BuiltDay, PlannedService } from './built.ts';
import { portionsPerQuarter, QUARTER_S } from './demand.ts';
import { frameOf } from './frame.ts';
import { resourcesOf } from './kitchen-resources.ts';
import { lacks } from './lacks.ts';
import { mixList, pullList, tubList } from './lists.ts';
import { type Frame, type Order, ofDish } from './order.ts';
import type { PlanRefusal } from './refusal.ts';
import type { CookPlan, PlannedDish } from './schema.ts';
import { tasksOf } from './tasks.ts';
import { unknownInPlan } from './unknown.ts';

type Service = CookPlan['services'][number];

/**
 * A cook plan worked out into batches, tasks, lists and the scheduling problem they make; or
 * everything that keeps it from being worked out. Whether hands and slots suffice for all of it at
 * once is the schedule's answer, not this one's.
 */
export function build(cookPlan: CookPlan, kitchen: Kitchen, catalogue: Catalogue): Built {
  const unknown = unknownInPlan(cookPlan, { kitchen, catalogue });
  const turned = cookPlan.services.flatMap(turnedRound);
  if (unknown.length > 0 || turned.length > 0) {
    const words = unknown.map((fault): PlanRefusal => ({ rule: 'unknown-word', ...fault }));
    return { ok: false, refusals: [...words, ...turned] };
  }
  const frame = frameOf(cookPlan, kitchen);
  const orders = cookPlan.services.flatMap((service) =>
    service.dishes.map((planned) => orderOf(cookPlan, service, planned, frame, catalogue)),
  );
  const refusals: PlanRefusal[] = [];
  const batches: OrderedBatch[] = [];
  for (const order of orders) {
    const lacking = [...lacks(order, frame, catalogue), ...soldAfterClosing(order)];
    const answer = lacking.length > 0 ? lacking : batchesOf(order, frame);
    if (isRefused(answer)) refusals.push(...answer);
    else batches.push(...answer);
  }
  if (refusals.length > 0) return { ok: false, refusals };
  return { ok: true, day: dayOf(cookPlan, frame, catalogue, orders, batches) };
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
  { kitchen, origin }: Frame,
  catalogue: Catalogue,
): Order {
  const dish = find(catalogue.dishes, planned.dish);
  const route = find(catalogue.routes, dish.route);
  const chosen = chosenOptions(route, planned.choices);
  const { opensAt, closesAt } = instantsOf(cookPlan, service, kitchen);
  const quarters = Math.max(1, Math.ceil(since(opensAt, closesAt) / QUARTER_S));
  const { id, name, opens } = service;
  return {
    service: { id, name, opens, opensS: since(origin, opensAt) },
    planned,
    dish,
    cut: find(catalogue.cuts, dish.cut),
    route,
    chosen,
    steps: chosenSteps(route, chosen),
    demand: portionsPerQuarter(planned.sales, quarters),
  };
}

function find<Item extends { readonly id: string }>(items: readonly Item[], id: string): Item {
  return must(
    items.find((item) => item.id === id),
    id,
  );
}

function instantsOf({ day }: CookPlan, { opens, closes }: Service, { zone }: Kitchen) {
  const opening = resolveLocal(day, opens, zone);
  const closesAt: Instant = resolveLocal(day, closes, zone).at;
  return { opensAt: opening.at, closesAt, reading: opening.reading };
}

function dayOf(
  cookPlan: CookPlan,
  frame: Frame,
  catalogue: Catalogue,
  orders: readonly Order[],
  batches: readonly OrderedBatch[],
): BuiltDay {
  const { kitchen, origin, horizonS } = frame;
  const steps = orders.flatMap((order) => order.steps.map(({ step }) => step));
  const setsC = steps.flatMap((step) => (step.work === 'place' ? [step.setC] : []));
  return {
    day: cookPlan.day,
    zone: kitchen.zone,
    origin,
    services: cookPlan.services.map((service) =>
      plannedService(cookPlan, service, kitchen, orders),
    ),
    batches: batches.map(({ batch }) => batch),
    tasks: batches.flatMap((ordered) => tasksOf(ordered, frame, catalogue)),
    pull: pullList(batches),
    mixes: mixList(batches, catalogue),
    tubs: tubList(batches),
    problem: {
      horizonS,
      activities: batches.flatMap((ordered) => activitiesOf(ordered, frame)),
      lags: batches.flatMap(lagsOf),
      resources: resourcesOf(frame, setsC),
      clashes: [],
      goals: batches.map(goalOf),
    },
    aims: batches.flatMap(aimsOf),
  };
}

function plannedService(
  cookPlan: CookPlan,
  service: Service,
  kitchen: Kitchen,
  orders: readonly Order[],
): PlannedService {
  const { opensAt, closesAt, reading } = instantsOf(cookPlan, service, kitchen);
  return {
    id: service.id,
    name: service.name,
    opensAt,
    closesAt,
    ...(reading === 'once' ? {} : { clockChange: reading }),
    demand: orders
      .filter((order) => order.service.id === service.id)
      .map(({ dish, demand }) => ({ dish: dish.id, portionsPerQuarter: demand })),
  };
}
