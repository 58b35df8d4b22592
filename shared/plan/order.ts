import type { Chosen, ChosenStep, Cut, Dish, Route } from '../catalogue/index.ts';
import type { Instant, Seconds, ServiceId, Span, Text } from '../kernel/index.ts';
import type { Kitchen } from '../kitchen/index.ts';
import type { PlannedDish } from './schema.ts';

/** One dish of one service, with all that the plan says of it. */
export type Order = {
  readonly service: {
    readonly id: ServiceId;
    readonly name: Text;
    readonly opens: string;
    readonly opensS: Seconds;
  };
  readonly planned: PlannedDish;
  readonly dish: Dish;
  readonly cut: Cut;
  readonly route: Route;
  readonly chosen: Chosen;
  readonly steps: readonly ChosenStep[];
  readonly demand: readonly number[];
};

/** The kitchen on the days of a plan. */
export type Frame = {
  readonly kitchen: Kitchen;
  readonly origin: Instant;
  readonly horizonS: Seconds;
  /** When each member of the crew is there, in seconds from the origin. */
  readonly hours: ReadonlyMap<string, readonly Span<Seconds>[]>;
};

/** Whom a refusal is about. */
export const ofDish = ({ service, dish }: Order) => ({ service: service.name, dish: dish.name });
/** Whom and what a refusal is about. */
export const ofStep = (order: Order, step: Text) => ({ ...ofDish(order), step });
