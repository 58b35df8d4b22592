import { describe, expect, it } from 'vitest';
import { makePlan } from '../../server/adopt.ts';
import { nearestOf } from '../../server/nearest.ts';
import { instant, must } from '../../shared/kernel/index.ts';
import { type CookPlan, portionsIn } from '../../shared/plan/index.ts';
import { filesWith, kitchenEveryDay, onePlan } from '../shared/plan/three-elms.ts';

const files = filesWith({ kitchen: kitchenEveryDay, cookPlan: onePlan({}) });
const before = files.cookPlan;
const at = { service: 'noon', dish: 'ribs' };
const asking = (portions: number): CookPlan => ({
  ...before,
  services: before.services.map((service) => ({
    ...service,
    dishes: service.dishes.map((dish) => ({
      ...dish,
      sales: { by: 'shape', portions, shape: 'even' },
    })),
  })),
});
const ask = (cookPlan: CookPlan, language: 'en' | 'es' = 'en') => ({
  files: { ...files, cookPlan },
  before,
  state: null,
  now: instant(0),
  language,
});
const still = () => 0;
/** Nobody is there before five in the morning. */
const kitchenFromFive = {
  ...kitchenEveryDay,
  crew: kitchenEveryDay.crew.map((person) => ({
    ...person,
    shifts: [{ on: [before.day], from: '05:00', to: '20:00', breaks: [] }],
  })),
};

describe('the nearest plan that fits', () => {
  it('asks for more than before and less than does not fit, and can be taken', () => {
    const found = must(nearestOf(ask(asking(2000)), still), 'something that fits');
    const most = portionsIn(found.plan, at);
    expect(most).toBeGreaterThan(portionsIn(before, at));
    expect(most).toBeLessThan(2000);
    expect(makePlan({ ...files, cookPlan: found.plan }, 1)).toMatchObject({ ok: true });
    expect(found.line).toContain(`: ${most} portions.`);
  });

  it('is what was found when the time is over', () => {
    let lookedAt = 0;
    const found = nearestOf(ask(asking(2000), 'es'), () => 5_000 * lookedAt++);
    const { plan, line } = must(found, 'what fits');
    const most = portionsIn(plan, at);
    expect(most).toBeLessThan(2000);
    expect(line).toMatch(new RegExp(`^Lo más que se halló que cabe: .*: ${most} porciones`));
    expect(lookedAt).toBeLessThan(5);
  });

  it('is none where no dish is asked for more of, or more is not what is wrong', () => {
    expect(nearestOf(ask(before), still)).toBeNull();
    // Counted for five hours of a service that is open for an hour and a half.
    const sales = { by: 'quarter' as const, portions: Array.from({ length: 20 }, () => 100) };
    const services = before.services.map((service) => ({
      ...service,
      dishes: service.dishes.map((dish) => ({ ...dish, sales })),
    }));
    expect(nearestOf(ask({ ...before, services }), still)).toBeNull();
  });

  it('opens as early as fits, where the crew is not there for what is asked', () => {
    const opening = (opens: string, closes: string) =>
      filesWith({ kitchen: kitchenFromFive, cookPlan: onePlan({}, { opens, closes }) });
    const early = opening('08:00', '09:30');
    expect(makePlan(early, 1)).toMatchObject({ ok: false });
    for (const was of [opening('18:00', '19:30').cookPlan, null]) {
      const asked = { ...ask(early.cookPlan), files: early, before: was };
      const { plan, line } = must(nearestOf(asked, still), 'something that fits');
      const [noon] = plan.services;
      expect(must(noon, 'a service').opens > '08:00').toBe(true);
      expect(must(noon, 'a service').opens < '18:00').toBe(true);
      expect(makePlan({ ...early, cookPlan: plan }, 1)).toMatchObject({ ok: true });
      expect(line).toMatch(/^The earliest that was found to fit: Noon opens at \d+:\d\d am\.$/);
    }
  });
});
