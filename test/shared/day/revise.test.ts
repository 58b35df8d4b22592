import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { revisePlan } from '../../../server/adopt.ts';
import { planOffer, standingOf } from '../../../shared/day/index.ts';
import { must } from '../../../shared/kernel/index.ts';
import { plan } from './demo.ts';
import { anyEdit, liveAt } from './edits.ts';

const { cookPlan, kitchen, catalogue } = plan;

describe('the plan of a running day', () => {
  // Two hours, one early and one in the midst of lunch, so that little and much has begun.
  const days = [26, 36].map((hour) => liveAt(hour));

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
