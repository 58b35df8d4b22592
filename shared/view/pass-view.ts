import type { Live } from '../day/index.ts';
import { allergensOfDish, soldAt, soldOutAt } from '../day/index.ts';
import type { DishId, Instant, StationId } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import type { PlannedService } from '../plan/index.ts';
import { viewHead } from './head.ts';
import type { PassDish, PassService } from './pass-dish.ts';
import { passPan } from './pass-pan.ts';
import type { ViewHead } from './view.ts';

/** What the carver sells from: for each dish of the service that is on, or the next. */
export type PassView = ViewHead & {
  readonly face: 'pass';
  /** Null when the last of the day is over. */
  readonly service: PassService | null;
  readonly dishes: readonly PassDish[];
};

/** The pass at the live day's now. */
export function passView(live: Live): PassView {
  const { built, catalogue } = live.index.plan;
  const service = serviceAt(built.services, live.now);
  const dishes = (service?.demand ?? []).map(({ dish, portionsPerQuarter }): PassDish => {
    const known = catalogue.dishes.find(({ id }) => id === dish);
    return {
      dish,
      name: must(known, dish).name,
      allergens: allergensOfDish(live.index.plan, dish),
      perQuarter: portionsPerQuarter,
      ...salesOf(live, must(service, 'a service'), dish),
      pans: built.batches
        .filter((batch) => batch.dish === dish)
        .map((batch) => passPan(live, batch))
        .sort((a, b) => a.readyAt - b.readyAt),
    };
  });
  return {
    face: 'pass',
    ...viewHead(live, passStations(live)),
    service: service && onlyTimes(service),
    dishes,
  };
}

/** Where what is sold is cut and set out. */
function passStations({ index }: Live): Set<StationId> {
  const { tasks, problem } = index.plan.built;
  const serving = new Set(problem.goals.map(({ activity }) => activity));
  return new Set(tasks.filter(({ id }) => serving.has(id)).map(({ station }) => station));
}

/** What was counted of a dish at this service, and at those before it. */
function salesOf({ state, index }: Live, { id, opensAt }: PlannedService, dish: DishId) {
  const before = index.plan.built.services.filter((other) => other.opensAt < opensAt);
  return {
    sold: soldAt(state, id, dish),
    soldBefore: before.reduce((sum, { id: other }) => sum + soldAt(state, other, dish), 0),
    soldOutAt: soldOutAt(state, id, dish),
  };
}

/** The first that has not closed. */
function serviceAt(services: readonly PlannedService[], now: Instant): PlannedService | null {
  const open = services.filter(({ closesAt }) => now < closesAt);
  return open.sort((a, b) => a.opensAt - b.opensAt)[0] ?? null;
}

const onlyTimes = ({ id, name, opensAt, closesAt }: PlannedService): PassService => ({
  id,
  name,
  opensAt,
  closesAt,
});
