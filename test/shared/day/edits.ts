import fc from 'fast-check';
import { openLive } from '../../../shared/day/index.ts';
import { after, must, seconds } from '../../../shared/kernel/index.ts';
import { type CookPlan, edited, type PlanEdit } from '../../../shared/plan/index.ts';
import { handsInOrder, plan, Telling } from './demo.ts';

const placed = new Map(plan.schedule.placements.map((each) => [each.activity, each]));

/** The demo's day after everybody has worked by the plan until then, each a little late. */
export function dayAt(hour: number): Telling {
  const day = new Telling();
  const { origin } = plan.built;
  const nowS = hour * 3600;
  for (const task of handsInOrder) {
    const { startS, endS } = must(placed.get(task), task);
    if (startS > nowS) break;
    day.ask({ kind: 'start', task }, after(origin, startS));
    if (endS + 60 <= nowS) {
      day.ask({ kind: 'finish', task }, after(origin, seconds(endS + 60)));
    }
  }
  return day;
}

export const hourAt = (hour: number) => after(plan.built.origin, seconds(hour * 3600));

export const liveAt = (hour: number, day = dayAt(hour)) => openLive(day.state, hourAt(hour));

const { cookPlan, catalogue } = plan;
export const dishes = cookPlan.services.flatMap(({ id, dishes }) =>
  dishes.map((dish) => ({ service: id, dish: dish.dish, planned: dish })),
);

/** An edit that a person might make of one dish. */
export const anyEdit = fc
  .record({
    at: fc.constantFrom(...dishes),
    kind: fc.constantFrom('more', 'less', 'drop', 'add', 'split', 'choose'),
    by: fc.integer({ min: 1, max: 12 }),
  })
  .map(({ at, kind, by }): CookPlan | null => {
    const { service, dish, planned } = at;
    const is = { service, dish };
    const portions =
      planned.sales.by === 'shape'
        ? planned.sales.portions
        : planned.sales.portions.reduce((a, b) => a + b, 0);
    const opens = must(
      cookPlan.services.find(({ id }) => id === service),
      service,
    ).opens;
    const choice = routeOf(dish).choices[0];
    const edit: PlanEdit =
      kind === 'more'
        ? { kind: 'portions', ...is, portions: portions + by }
        : kind === 'less'
          ? { kind: 'portions', ...is, portions: Math.max(1, portions - by) }
          : kind === 'drop'
            ? { kind: 'dropBatch', ...is, number: 2 }
            : kind === 'add'
              ? { kind: 'addBatch', ...is, portions: by, ready: opens }
              : kind === 'split' || !choice
                ? { kind: 'splitBatch', ...is, number: 1, portions: by, ready: opens }
                : {
                    kind: 'choose',
                    ...is,
                    choice: choice.id,
                    option: must(choice.options.at(-1), 'an option').id,
                  };
    return edited(cookPlan, edit, plan.built);
  });

export function routeOf(dish: string) {
  const { route } = must(
    catalogue.dishes.find(({ id }) => id === dish),
    dish,
  );
  return must(
    catalogue.routes.find(({ id }) => id === route),
    route,
  );
}
