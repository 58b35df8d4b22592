import type { Instant } from '../kernel/index.ts';
import type { DayEnd, DishEnd, ServiceEnd } from './day-end.ts';

/**
 * What is left of services that are over, then of each that is still on, by which closes first; one
 * group without a service and with nothing in it where nothing is left at all.
 */
export function leftByService(
  { dishes }: DayEnd,
  now: Instant,
): readonly { readonly service: ServiceEnd | null; readonly dishes: readonly DishEnd[] }[] {
  const isOn = ({ closesAt }: ServiceEnd) => now < closesAt;
  const on = new Map(
    dishes
      .flatMap(({ pans }) => pans.map(({ service }) => service))
      .filter(isOn)
      .sort((a, b) => a.closesAt - b.closesAt)
      .map((service) => [service.id, service]),
  );
  const those = (is: (service: ServiceEnd) => boolean) =>
    dishes
      .map((dish) => ({ ...dish, pans: dish.pans.filter(({ service }) => is(service)) }))
      .filter(({ pans }) => pans.length > 0);
  const over = those((service) => !isOn(service));
  return [
    ...(over.length > 0 || on.size === 0 ? [{ service: null, dishes: over }] : []),
    ...[...on.values()].map((service) => ({
      service,
      dishes: those(({ id }) => id === service.id),
    })),
  ];
}
