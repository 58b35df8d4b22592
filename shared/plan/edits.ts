import type { Instant, LocalDay, Seconds, WallTime } from '../kernel/index.ts';
import { after, daysBetween, must, seconds, wallTime } from '../kernel/index.ts';
import type { Batch, BuiltDay } from './built.ts';
import { numberOf } from './keeping-batches.ts';
import type { CookPlan, PlannedBatch, PlannedDish } from './schema.ts';

/** Which dish of which service an edit is about. */
export type DishAt = { readonly service: string; readonly dish: string };

/** One change of a cook plan, as a person says it. */
export type PlanEdit = DishAt &
  (
    | { readonly kind: 'portions'; readonly portions: number }
    /** Null: what is usual on the route again. */
    | { readonly kind: 'choose'; readonly choice: string; readonly option: string | null }
    | { readonly kind: 'addBatch'; readonly portions: number; readonly ready: WallTime }
    /** Two of one: the second has these portions and is ready at that time. */
    | {
        readonly kind: 'splitBatch';
        readonly number: number;
        readonly portions: number;
        readonly ready: WallTime;
      }
    /** The second goes into the first. */
    | { readonly kind: 'mergeBatches'; readonly number: number; readonly other: number }
    | { readonly kind: 'dropBatch'; readonly number: number }
  );

/**
 * The cook plan after an edit; null where it speaks of what is not there, or leaves nothing of a
 * dish. Batches that followed from the sales are written out first, as the built day has them.
 */
export function edited(plan: CookPlan, edit: PlanEdit, built: BuiltDay): CookPlan | null {
  let found = false;
  const services = plan.services.map((service) => {
    if (service.id !== edit.service) return service;
    const dishes = service.dishes.flatMap((dish) => {
      if (dish.dish !== edit.dish) return [dish];
      const changed = editedDish(dish, edit, built);
      found = changed !== null;
      return changed ? [changed] : [];
    });
    return { ...service, dishes };
  });
  return found ? { ...plan, services } : null;
}

function editedDish(dish: PlannedDish, edit: PlanEdit, built: BuiltDay): PlannedDish | null {
  switch (edit.kind) {
    case 'portions':
      return withPortions(dish, edit.portions);
    case 'choose': {
      const { [edit.choice]: _usual, ...others } = dish.choices;
      const { choice, option } = edit;
      return { ...dish, choices: option === null ? others : { ...others, [choice]: option } };
    }
    default:
      return withBatches(dish, editedBatches(batchesIn(dish, edit, built), edit));
  }
}

/** Portions that a plan asks for of a dish at a service; nought where it has none. */
export function portionsIn({ services }: CookPlan, at: DishAt): number {
  const dishes = services.find(({ id }) => id === at.service)?.dishes;
  const dish = dishes?.find((each) => each.dish === at.dish);
  if (!dish) return 0;
  const { batches, sales } = dish;
  if (batches) return sum(batches.map(({ portions }) => portions));
  return sales.by === 'shape' ? sales.portions : sum(sales.portions);
}

/** The plan with so many of a dish; batches that it names are scaled. Of none it is left out. */
export function askingFor(plan: CookPlan, at: DishAt, portions: number): CookPlan {
  const services = plan.services.map((service) => {
    if (service.id !== at.service) return service;
    const dishes = service.dishes.flatMap((dish) => {
      if (dish.dish !== at.dish) return [dish];
      return portions < 1 ? [] : [scaled(dish, portions)];
    });
    return { ...service, dishes };
  });
  return { ...plan, services: services.filter(({ dishes }) => dishes.length > 0) };
}

/** The plan with a service so much later, and with it all that is to be ready for it. */
export function openingLater(plan: CookPlan, service: string, byS: Seconds): CookPlan {
  const later = (time: WallTime) => laterClock(time, byS);
  const services = plan.services.map((each) =>
    each.id === service
      ? {
          ...each,
          opens: later(each.opens),
          closes: later(each.closes),
          dishes: each.dishes.map((dish) => readyLater(dish, later)),
        }
      : each,
  );
  return { ...plan, services };
}

function readyLater({ batches, ...dish }: PlannedDish, later: (time: WallTime) => WallTime) {
  if (!batches) return dish;
  return { ...dish, batches: batches.map((each) => ({ ...each, ready: later(each.ready) })) };
}

/** Whole minutes later; past midnight the hours are counted on. */
function laterClock(time: WallTime, byS: Seconds): WallTime {
  const minute = minuteOf(time) + byS / 60;
  return `${twoDigits(Math.floor(minute / 60))}:${twoDigits(minute % 60)}`;
}

/** How much later a time of the plan's day is than another, in seconds; past midnight as well. */
export function clockBetween(from: WallTime, to: WallTime): Seconds {
  return seconds((minuteOf(to) - minuteOf(from)) * 60);
}

function minuteOf(time: WallTime): number {
  const [hour = '', minute = ''] = time.split(':');
  return Number(hour) * 60 + Number(minute);
}

const twoDigits = (n: number) => String(n).padStart(2, '0');

function scaled(dish: PlannedDish, portions: number): PlannedDish {
  const { batches } = dish;
  if (!batches) return withPortions(dish, portions);
  const was = sum(batches.map((each) => each.portions));
  const share = (each: number) => Math.max(1, Math.floor((each * portions) / was));
  return { ...dish, batches: batches.map((each) => ({ ...each, portions: share(each.portions) })) };
}

const sum = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0);

type BatchEdit = Exclude<PlanEdit, { kind: 'portions' | 'choose' }>;

function editedBatches(
  batches: readonly PlannedBatch[],
  edit: BatchEdit,
): readonly PlannedBatch[] | null {
  switch (edit.kind) {
    case 'addBatch': {
      const { portions, ready } = edit;
      return [...batches, { number: nextNumber(batches), portions, ready }];
    }
    case 'splitBatch': {
      const { number, portions, ready } = edit;
      const one = batches.find((each) => each.number === number);
      if (!one || portions < 1 || portions >= one.portions) return null;
      const rest = { ...one, portions: one.portions - portions };
      const second = { number: nextNumber(batches), portions, ready };
      return [...batches.map((each) => (each === one ? rest : each)), second];
    }
    case 'mergeBatches': {
      const [one, other] = [edit.number, edit.other].map((number) =>
        batches.find((each) => each.number === number),
      );
      if (!one || !other || one === other) return null;
      const both = { ...one, portions: one.portions + other.portions };
      return batches.flatMap((each) => (each === one ? [both] : each === other ? [] : [each]));
    }
    default:
      return batches.some(({ number }) => number === edit.number)
        ? batches.filter(({ number }) => number !== edit.number)
        : null;
  }
}

/** A number that no batch has or had before it. */
const nextNumber = (batches: readonly PlannedBatch[]) =>
  Math.max(0, ...batches.map(({ number }) => number)) + 1;

function withBatches(
  dish: PlannedDish,
  batches: readonly PlannedBatch[] | null,
): PlannedDish | null {
  return batches && batches.length > 0 ? { ...dish, batches } : null;
}

/** New sales make the batches anew, but for those that have begun. */
function withPortions({ batches: _old, ...dish }: PlannedDish, portions: number): PlannedDish {
  const { sales } = dish;
  if (sales.by === 'shape') return { ...dish, sales: { ...sales, portions } };
  const was = sum(sales.portions);
  const shares = sales.portions.map((each) => Math.floor((each * portions) / Math.max(1, was)));
  const busiest = sales.portions.indexOf(Math.max(...sales.portions));
  const left = portions - sum(shares);
  const counted = shares.map((each, quarter) => (quarter === busiest ? each + left : each));
  return { ...dish, sales: { ...sales, portions: counted } };
}

function batchesIn(dish: PlannedDish, { service }: DishAt, built: BuiltDay): PlannedBatch[] {
  if (dish.batches) return [...dish.batches];
  return built.batches
    .filter((batch) => batch.service === service && batch.dish === dish.dish)
    .map((batch) => writtenOut(batch, built))
    .sort((a, b) => a.number - b.number);
}

/** A batch as the plan would name it. */
export function writtenOut({ id, portions, neededS }: Batch, built: BuiltDay): PlannedBatch {
  const ready = clockOf(after(built.origin, seconds(neededS)), built);
  return { number: numberOf(id), portions, ready };
}

/** Wall time counted on from midnight of the plan's day: half past midnight is 24:30. */
function clockOf(at: Instant, { day, zone }: BuiltDay): WallTime {
  const wall = wallTime(at, zone);
  const [hour = '', minute = ''] = wall.time.split(':');
  const hours = Number(hour) + 24 * daysBetween(day as LocalDay, wall.day);
  return `${twoDigits(hours)}:${must(minute, wall.time)}`;
}
