import { expect, it } from 'vitest';
import { demoDay } from '../../../server/demo/index.ts';
import { planLimits, profileNamed } from '../../../server/plan-limits.ts';
import { must, resolveLocal } from '../../../shared/kernel/index.ts';
import { betterDay, build, planDay } from '../../../shared/plan/index.ts';
import { chain, check, construct, improve } from '../../../shared/schedule/index.ts';

const NOON = resolveLocal('2026-03-04', '12:00', 'America/Chicago').at;

const engine = { planner: construct, improve, chain, check };

it('finds for the demo a plan that holds with its rounds and is nearer to the best', () => {
  const { cookPlan, kitchen, catalogue } = demoDay(NOON, 'America/Chicago');
  const limits = planLimits(must(profileNamed(kitchen.limits), 'the demo names its limits'));
  const made = build(cookPlan, { kitchen, catalogue, limits });
  if (!made.ok) throw new Error('the demo can be built');
  const planned = planDay(made.day, construct, { seed: 1 });
  if (!planned.ok) throw new Error('the demo can be planned');
  const better = must(
    betterDay(made.day, planned, engine, { seed: 1, steps: 120 }),
    'a better plan',
  );
  expect(check(better.day.problem, better.schedule)).toEqual([]);
  const { before, after, aheadLeastS } = better;
  expect([after.lateS, after.shortS]).toEqual([before.lateS, before.shortS]);
  expect(after.aheadS).toBeLessThan(before.aheadS);
  expect(after.aheadS).toBeGreaterThanOrEqual(aheadLeastS);
  // A day as busy as this is planned within a few parts in a hundred of what none can beat.
  expect(after.aheadS / aheadLeastS).toBeLessThan(1.05);
});
