import { describe, expect, it } from 'vitest';
import { planOn, weekAfter } from '../../../client/desk/new-in-plan.ts';
import { makePlan } from '../../../server/adopt.ts';
import { must, since, wallTime } from '../../../shared/kernel/index.ts';
import { filesWith, kitchenEveryDay, onePlan } from '../../shared/plan/three-elms.ts';

const files = filesWith({ kitchen: kitchenEveryDay, cookPlan: onePlan({}) });

function madeOn(day: string) {
  const made = makePlan({ ...files, cookPlan: planOn(files.cookPlan, day) }, 1);
  const { plan } = must(made.ok ? made : null, JSON.stringify(made));
  const [service] = plan.built.services;
  const { opensAt } = must(service, 'a service');
  const { origin, zone } = plan.built;
  return { wall: wallTime(opensAt, zone), afterMidnightS: since(origin, opensAt), plan };
}

describe('a plan that is copied to the next week', () => {
  it('falls on the same day of the week, over the ends of months and years', () => {
    expect(weekAfter('2026-12-28')).toBe('2027-01-04');
    expect(weekAfter('2028-02-24')).toBe('2028-03-02');
    expect(weekAfter('soon')).toBe('soon');
  });

  // The nights of the clock changes of the United States in 2026, by the zone database of IANA.
  it.each([
    ['an hour shorter', '2026-03-01', '2026-03-08', -3600],
    ['an hour longer', '2026-10-25', '2026-11-01', 3600],
  ])('opens at the same time by the clock after a night that is %s', (_what, from, to, byS) => {
    expect(weekAfter(from)).toBe(to);
    const [one, other] = [madeOn(from), madeOn(to)];
    expect(one.plan.kitchen.zone).toBe('America/Chicago');
    expect(other.wall).toEqual({ ...one.wall, day: to });
    // Work the night before is counted in hours that pass.
    expect(other.afterMidnightS - one.afterMidnightS).toBe(byS);
    const goal = ({ plan }: typeof one) => must(plan.built.problem.goals[0], 'a goal').dueS;
    expect(goal(other) - goal(one)).toBe(byS);
  });
});
