import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { revisePlan } from '../../../server/adopt.ts';
import { openLive, planOffer, standingOf } from '../../../shared/day/index.ts';
import { after, must, seconds } from '../../../shared/kernel/index.ts';
import { type CookPlan, edited, type PlanEdit } from '../../../shared/plan/index.ts';
import { handsInOrder, plan, Telling } from './demo.ts';

const placed = new Map(plan.schedule.placements.map((each) => [each.activity, each]));

/** The demo's day after everybody has worked by the plan until then, each a little late. */
function dayAt(hour: number): Telling {
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

const liveAt = (hour: number) =>
  openLive(dayAt(hour).state, after(plan.built.origin, seconds(hour * 3600)));

const { cookPlan, kitchen, catalogue } = plan;
const dishes = cookPlan.services.flatMap(({ id, dishes }) =>
  dishes.map((dish) => ({ service: id, dish: dish.dish, planned: dish })),
);

/** An edit that a person might make of one dish. */
const anyEdit = fc
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

function routeOf(dish: string) {
  const { route } = must(
    catalogue.dishes.find(({ id }) => id === dish),
    dish,
  );
  return must(
    catalogue.routes.find(({ id }) => id === route),
    route,
  );
}

describe('the plan of a running day', () => {
  // Two hours, one early and one in the midst of lunch, so that little and much has begun.
  const days = [26, 36].map(liveAt);

  it('lets what has started stand, and untouched batches keep their hands and places', () => {
    let taken = 0;
    fc.assert(
      fc.property(fc.constantFrom(...days), anyEdit, (live, next) => {
        fc.pre(next !== null);
        // It throws a Bug where the independent checker finds anything wrong.
        const revised = revisePlan({ cookPlan: must(next, 'a plan'), kitchen, catalogue }, live);
        if (!revised.ok) return;
        taken++;
        const changed = new Set<string>(revised.planned);
        const batches = new Set<string>(revised.plan.built.batches.map(({ id }) => id));
        const is = new Map(revised.plan.schedule.placements.map((each) => [each.activity, each]));
        for (const [id, was] of standingOf(live)) {
          const batch = must(live.index.tasks.get(id), id).batch;
          if (was.stage === 'waiting' && (changed.has(batch) || !batches.has(batch))) continue;
          const { mode, uses, startS, endS } = must(is.get(id), id);
          expect({ id, mode, uses }).toEqual({ id, mode: was.mode, uses: was.uses });
          if (was.stage !== 'waiting') expect({ id, startS }).toEqual({ id, startS: was.startS });
          if (was.stage === 'done') expect({ id, endS }).toEqual({ id, endS: was.endS });
        }
      }),
      { numRuns: 12 },
    );
    expect(taken).toBeGreaterThan(2);
  });

  it('stays as it is where its edit changes nothing', () => {
    const live = must(days[1], 'a day');
    const revised = revisePlan({ cookPlan, kitchen, catalogue }, live);
    if (!revised.ok) throw new Error(JSON.stringify(revised));
    expect(revised.planned).toEqual([]);
    const offer = planOffer(live, revised.plan, new Set());
    expect(offer).toMatchObject({ batches: [], tasksChanged: 0 });
    for (const { beforeS, afterS } of offer.services) expect(afterS).toBe(beforeS);
    expect(revised.plan.built.batches.map(({ id, pieces }) => ({ id, pieces }))).toEqual(
      plan.built.batches.map(({ id, pieces }) => ({ id, pieces })),
    );
  });

  it('does not lose a batch that work has begun on', () => {
    const live = must(days[1], 'a day');
    const without = {
      ...cookPlan,
      services: cookPlan.services.map((service) => ({
        ...service,
        dishes: service.dishes.filter(({ dish }) => dish !== 'chicken'),
      })),
    };
    const before = live.state;
    const revised = revisePlan({ cookPlan: without, kitchen, catalogue }, live);
    expect(revised).toMatchObject({ ok: false, why: 'refused' });
    expect(JSON.stringify(revised)).toContain('batch-begun');
    expect(live.state).toBe(before);
  });
});
