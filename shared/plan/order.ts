import type { Chosen, ChosenStep, Cut, Dish, Route } from '../catalogue/index.ts';
import type {
  Celsius,
  Instant,
  Seconds,
  ServiceId,
  SmokerId,
  Span,
  StepId,
  Text,
} from '../kernel/index.ts';
import type { Kitchen } from '../kitchen/index.ts';
import type { FoodKind, Limits } from './limits.ts';
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
  /** The cut that the chosen options make of the dish's own. */
  readonly cut: Cut;
  readonly route: Route;
  readonly chosen: Chosen;
  readonly steps: readonly ChosenStep[];
  /** What the food is to the limits during each step. */
  readonly kinds: ReadonlyMap<StepId, FoodKind>;
  readonly demand: readonly number[];
  /** The batches that the plan names itself; none: they follow from the demand. */
  readonly readyAt: readonly {
    readonly number: number;
    readonly portions: number;
    readonly neededS: Seconds;
  }[];
};

/** The set temperature that each smoker is to keep, if it can. */
export type Homes = ReadonlyMap<SmokerId, Celsius>;

/** The kitchen on the days of a plan, and the limits that hold in it. */
export type Frame = {
  readonly kitchen: Kitchen;
  readonly limits: Limits;
  readonly homes: Homes;
  readonly origin: Instant;
  readonly horizonS: Seconds;
  /** When each member of the crew is there, in seconds from the origin. */
  readonly hours: ReadonlyMap<string, readonly Span<Seconds>[]>;
};

/** Whom a refusal is about. */
export const ofDish = ({ service, dish }: Order) => ({ service: service.name, dish: dish.name });
/** Whom and what a refusal is about. */
export const ofStep = (order: Order, step: Text) => ({ ...ofDish(order), step });
