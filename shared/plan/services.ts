import type { Instant } from '../kernel/index.ts';
import { resolveLocal } from '../kernel/index.ts';
import type { PlannedService } from './built.ts';
import type { Order } from './order.ts';
import type { CookPlan, Service } from './schema.ts';

/** When a service opens and closes; of a time that comes twice that night the first is taken. */
export function instantsOf({ day }: CookPlan, { opens, closes }: Service, zone: string) {
  const at = (time: Service['opens']): Instant => resolveLocal(day, time, zone).at;
  return { opensAt: at(opens), closesAt: at(closes) };
}

/** The services of a plan, with what each is expected to sell when. */
export function plannedServices(
  cookPlan: CookPlan,
  zone: string,
  orders: readonly Order[],
): PlannedService[] {
  return cookPlan.services.map((service) => {
    const { opensAt, closesAt } = instantsOf(cookPlan, service, zone);
    return {
      id: service.id,
      name: service.name,
      opensAt,
      closesAt,
      demand: orders
        .filter((order) => order.service.id === service.id)
        .map(({ dish, demand }) => ({ dish: dish.id, portionsPerQuarter: demand })),
    };
  });
}
