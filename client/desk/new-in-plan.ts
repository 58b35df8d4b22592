import type { CookPlan, PlanMenu, PlannedDish } from '../../shared/protocol/index.ts';

/** A dish as it comes into a plan, for somebody to say more of it. */
export function newDish(id: string): PlannedDish {
  const sales = { by: 'shape', portions: 10, shape: 'even' } as const;
  return { dish: id as PlannedDish['dish'], sales, choices: {}, hands: {} };
}

/** The plan with one more service, after the last; as it was where nothing can be served. */
export function withNewService(plan: CookPlan, { dishes: [dish] }: PlanMenu): CookPlan {
  if (!dish) return plan;
  const id = `service-${plan.services.length + 1}`;
  const opens = plan.services.at(-1)?.closes ?? '12:00';
  const service = { id, name: { en: id }, opens, closes: '23:00', dishes: [newDish(dish.id)] };
  return { ...plan, services: [...plan.services, service as unknown as Service] };
}

type Service = CookPlan['services'][number];

/** The same plan for another day. */
export const planOn = (plan: CookPlan, day: string): CookPlan => ({
  ...plan,
  day: day as CookPlan['day'],
});

/** The same day of the next week; what is no day stays as it is. */
export function weekAfter(day: string): string {
  const at = new Date(`${day}T12:00:00Z`);
  if (Number.isNaN(at.getTime())) return day;
  at.setUTCDate(at.getUTCDate() + 7);
  return at.toISOString().slice(0, 10);
}
