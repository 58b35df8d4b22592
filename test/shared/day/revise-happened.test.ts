import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { revisePlan } from '../../../server/adopt.ts';
import { type Live, shutIn, standingOf } from '../../../shared/day/index.ts';
import {
  after,
  type Celsius,
  type Kilograms,
  must,
  type PersonId,
  seconds,
} from '../../../shared/kernel/index.ts';
import { type CookPlan, edited, type PlanEdit } from '../../../shared/plan/index.ts';
import { plan, type Telling } from './demo.ts';
import { dayAt, dishes, hourAt, liveAt, routeOf } from './edits.ts';

const { cookPlan, kitchen, catalogue } = plan;
const revised = (next: CookPlan | null, live: Live) =>
  revisePlan({ cookPlan: must(next, 'a plan'), kitchen, catalogue }, live);
const edit = (change: PlanEdit) => edited(cookPlan, change, plan.built);
const reading = 60 as Celsius;

/** The demo's day at two in the night of it, or in the midst of lunch, after that happened. */
function after26(tell: (day: Telling) => unknown, hour = 26): Live {
  const day = dayAt(hour);
  tell(day);
  return liveAt(hour, day);
}

const smokers = kitchen.smokers.map(({ id }) => id);
const [smoker] = smokers as [(typeof smokers)[number]];

describe('a plan that is changed while something is lacking', () => {
  const hands = kitchen.crew.map(({ id }) => id);
  const lacking = fc.record({
    down: fc.constantFrom(...smokers),
    kind: fc.constantFrom('smokerDown' as const, 'smokerCold' as const),
    hand: fc.constantFrom(...hands),
    backIn: fc.option(fc.integer({ min: 1, max: 8 }), { nil: null }),
  });

  /** Some of what a dinner has hours ahead: more of it finds room with less than everything. */
  const more = fc
    .tuple(fc.constantFrom('slaw', 'sausage', 'ribs', 'chicken'), fc.integer({ min: 1, max: 12 }))
    .map(([dish, by]) => {
      const its = must(
        dishes.find((each) => each.dish === dish && each.service === 'dinner'),
        dish,
      );
      const { sales } = its.planned;
      const portions = by + (sales.by === 'shape' ? sales.portions : 0);
      return edit({ kind: 'portions', service: its.service, dish: its.dish, portions });
    });

  it('puts nothing new where there is no fire, nor to a hand that is out', () => {
    let taken = 0;
    fc.assert(
      fc.property(more, lacking, (next, { down, kind, hand, backIn }) => {
        const now = hourAt(26);
        const backAt = backIn === null ? null : after(now, seconds(backIn * 3600));
        const live = after26((day) => {
          const its = { smoker: down, tempC: reading };
          day.ask(kind === 'smokerCold' ? { kind, ...its } : { kind, ...its, backAt }, now);
          day.ask({ kind: 'handOut', hand, backAt }, now);
        });
        const made = revised(next, live);
        if (!made.ok) return;
        const anew = new Set<string>(made.planned);
        const batchOf = new Map(made.plan.built.tasks.map(({ id, batch }) => [id, batch]));
        const shut = shutIn(live);
        expect([...shut.keys()]).toContain(`hand:${hand}`);
        const was = standingOf(live);
        for (const { activity, uses, startS, endS } of made.plan.schedule.placements) {
          const isOld = (was.get(activity)?.stage ?? 'waiting') !== 'waiting';
          if (isOld || !anew.has(batchOf.get(activity) ?? '')) continue;
          taken++;
          for (const { resource } of uses) {
            const away = shut.get(resource);
            const isIn = away && startS < away.end && away.start < endS;
            expect({ activity, resource, isIn: isIn ?? false }).toMatchObject({ isIn: false });
          }
        }
      }),
      { numRuns: 8 },
    );
    expect(taken).toBeGreaterThan(0);
  });

  it('may use a smoker again from when it is expected back, and not before', () => {
    const at = hourAt(26);
    const backAt = after(at, seconds(2 * 3600));
    const shut = shutIn(
      after26((day) => day.ask({ kind: 'smokerDown', smoker, tempC: reading, backAt }, at)),
    );
    const racks = must(kitchen.smokers[0], 'a smoker').racks;
    for (const { slot } of racks) {
      expect(shut.get(`slot:${slot}` as never)).toEqual({ start: 26 * 3600, end: 28 * 3600 });
    }
    expect(shut.size).toBe(racks.length);
  });

  it('counts on a smoker and a hand that are there again', () => {
    const [hand] = hands as [PersonId];
    const at = hourAt(26);
    const live = after26((day) => {
      day.ask({ kind: 'smokerDown', smoker, tempC: reading, backAt: null }, at);
      day.ask({ kind: 'handOut', hand, backAt: null }, at);
      day.ask({ kind: 'smokerUp', smoker, tempC: 110 as Celsius }, at);
      day.ask({ kind: 'handIn', hand }, at);
    });
    expect(shutIn(live).size).toBe(0);
  });

  it('asks for no more pieces than came, and is not held to what was lacking before', () => {
    const line = must(
      plan.built.pull.find(({ cut }) => cut === plan.built.batches[0]?.bought),
      'a line',
    );
    const came = line.pieces - 2;
    const weightKg = ((line.weightKg * came) / line.pieces) as Kilograms;
    const live = after26((day) =>
      day.ask({ kind: 'delivery', cut: line.cut, pieces: came, weightKg }, hourAt(26)),
    );
    const { service, dish } = must(plan.built.batches[0], 'a batch');
    const dinner = must(
      dishes.find((each) => each.dish === dish && each.service !== service),
      'the same at dinner',
    );
    const more: PlanEdit = { kind: 'portions', ...dinner, portions: 90 };
    expect(revised(edit(more), live)).toMatchObject({
      ok: false,
      why: 'refused',
      refusals: [{ rule: 'not-delivered', has: came }],
    });
    const other: PlanEdit = { kind: 'portions', service: 'dinner', dish: 'slaw', portions: 61 };
    expect(revised(edit(other), live)).toMatchObject({ ok: true });
  });
});

describe('a change of one dish', () => {
  it('leaves hands, places and times of every other batch as they are', () => {
    const live = liveAt(26);
    const was = standingOf(live);
    let alone = 0;
    for (const { service, dish } of dishes.filter((each) => each.service === 'dinner')) {
      const [choice] = routeOf(dish).choices;
      if (!choice) continue;
      const option = must(choice.options.at(-1), 'an option').id;
      const made = revised(
        edit({ kind: 'choose', service, dish, choice: choice.id, option }),
        live,
      );
      if (!made.ok || made.planned.length === 0) continue;
      alone++;
      const anew = new Set<string>(made.planned);
      const is = new Map(made.plan.schedule.placements.map((each) => [each.activity, each]));
      for (const { id, batch } of plan.built.tasks.filter((task) => !anew.has(task.batch))) {
        const isRound = plan.built.upkeep.some((thing) => thing.id === batch);
        if (isRound) continue;
        const { stage: _, ...stands } = must(was.get(id), id);
        expect(is.get(id)).toEqual(stands);
      }
    }
    expect(alone).toBeGreaterThan(1);
  });
});
