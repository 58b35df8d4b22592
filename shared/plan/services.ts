import type { Instant } from '../kernel/index.ts';
import { resolveLocal } from '../kernel/index.ts';
import type { PlannedService } from './built.ts';
import type { Order } from './order.ts';
import type { CookPlan, Service } from './schema.ts';

/** When a service opens and closes; `reading` says what a clock change made of the first. */
export function instantsOf({ day }: CookPlan, { opens, closes }: Service, zone: string) {
  const opening = resolveLocal(day, opens, zone);
  const closesAt: Instant = resolveLocal(day, closes, zone).at;
  return { opensAt: opening.at, closesAt, reading: opening.reading };
}

/** The services of a plan, with what each is expected to sell when. */
export function plannedServices(
  cookPlan: CookPlan,
  zone: string,
  orders: readonly Order[],
): PlannedService[] {
  return cookPlan.services.map((service) => {
    const { opensAt, closesAt, reading } = instantsOf(cookPlan, service, zone);
    return {
      id: service.id,
      name: service.name,
      opensAt,
      closesAt,
      ...(reading === 'once' ? {} : { clockChange: reading }),
      demand: orders
        .filter((order) => order.service.id === service.id)
        .map(({ dish, demand }) => ({ dish: dish.id, portionsPerQuarter: demand })),
    };
  });
}
