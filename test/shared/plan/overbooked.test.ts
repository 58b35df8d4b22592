import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoDay } from '../../../server/demo/index.ts';
import { must, resolveLocal, seconds } from '../../../shared/kernel/index.ts';
import { build, planDay } from '../../../shared/plan/index.ts';
import { overbooked } from '../../../shared/plan/overbooked.ts';
import { construct } from '../../../shared/schedule/index.ts';
import { activity, goal, need, problem, resourceId, unit, work } from '../schedule/problems.ts';
import { randomProblem } from '../schedule/random-problem.ts';
import { limits } from './three-elms.ts';

const job = (name: string, lengthS: number, hands: readonly string[]) =>
  activity(name, work(lengthS), [need(hands, 1, 'hand')]);

describe('a day that asks for more than there is', () => {
  it('is told by how much, on whom, between when and by what', () => {
    const day = problem({
      activities: [job('a', 60, ['ana', 'ben']), job('b', 60, ['ana']), job('c', 90, ['ben'])],
      resources: [unit('ana', [[0, 80]]), unit('ben', [[20, 100]])],
      goals: [goal('a', 100), goal('b', 100), goal('c', 100)],
    });
    // 210 s of work, and 160 s of hands.
    expect(overbooked(day)).toMatchObject({
      kind: 'no-room',
      activity: 'c',
      resources: ['ana', 'ben'],
      window: { start: 0, end: 100 },
      shortS: 50,
      blockedBy: ['a', 'b'],
    });
  });

  it('counts what stands already as taken', () => {
    const uses = [{ need: 0, resource: resourceId('ana') }];
    const pin = { mode: 'only', startS: seconds(0), endS: seconds(60), uses };
    const standing = { ...job('a', 60, ['ana']), pin };
    const day = problem({
      activities: [standing, job('b', 60, ['ana'])],
      resources: [unit('ana', [[0, 100]])],
      goals: [goal('b', 100)],
    });
    expect(overbooked(day)).toMatchObject({ activity: 'b', shortS: 20 });
  });

  it('is never one that a schedule is found for', () => {
    let found = 0;
    fc.assert(
      fc.property(randomProblem({ dueS: 120 }), (day) => {
        if (!construct(day, { seed: 1 }).ok) return;
        found++;
        expect(overbooked(day)).toBeNull();
      }),
      { numRuns: 150 },
    );
    expect(found).toBeGreaterThan(20);
  });

  it('is refused at once where two thousand portions are asked for, before any search', () => {
    const { kitchen, catalogue, cookPlan } = demoDay(noon, zone);
    const services = cookPlan.services.map((service) => ({
      ...service,
      dishes: service.dishes.map((dish) =>
        dish.dish === 'ribs' ? { ...dish, sales: { ...sales, portions: 2000 } } : dish,
      ),
    }));
    const built = build({ ...cookPlan, services }, { kitchen, catalogue, limits });
    const day = must(built.ok ? built.day : null, JSON.stringify(built));
    const planned = planDay(
      day,
      () => {
        throw new Error('no search is needed');
      },
      { seed: 1 },
    );
    expect(planned).toMatchObject({ ok: false, conflicts: [{ kind: 'no-room' }] });
  });
});

const zone = 'America/Chicago';
const noon = resolveLocal('2026-03-04', '12:00', zone).at;
const sales = { by: 'shape', shape: 'middle' } as const;
