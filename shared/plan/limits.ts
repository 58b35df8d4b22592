import type { Celsius, Seconds, Text } from '../kernel/index.ts';
import type { Ingoing } from './ingoing.ts';

/** What a food is to the limits. */
export type FoodKind =
  | 'intact'
  | 'injected'
  | 'ground'
  | 'stuffed'
  | 'chicken'
  | 'turkey'
  | 'poultry'
  | 'plant';

/** Which row of a profile of limits speaks, and where it stands. */
export type LimitRow = {
  readonly id: string;
  readonly what: Text;
  readonly section: string;
  readonly source: string;
  readonly edition: string;
};

/** A row that a plan would break; amounts in words, as the row prints them. */
export type Breach = {
  readonly row: LimitRow;
  readonly asked: string | null;
  readonly found: string | null;
};

type Lying = { readonly kind: FoodKind; readonly raw: boolean };

/**
 * The limits that a plan is held to. They come in from outside, since this room knows meat and
 * fires and no law; each answers with the row that is broken, or null.
 */
export type Limits = {
  /** What the coldest point of that food must reach; null where the profile has no figure. */
  coreNeededC(kind: FoodKind): Celsius | null;
  endTemperature(food: {
    readonly kind: FoodKind;
    readonly coreC: Celsius;
    readonly heldS: Seconds;
  }): Breach | null;
  hotHold(tempC: Celsius): Breach | null;
  coldHold(tempC: Celsius): Breach | null;
  reheat(food: { readonly coreC: Celsius; readonly heldS: Seconds }): Breach | null;
  reheatWithin(tookS: Seconds): Breach | null;
  /** Stages as a route has them: so cold, so long after the cooling began. */
  cooling(stages: readonly { readonly toC: Celsius; readonly withinS: Seconds }[]): Breach | null;
  outOfTemperature(outS: Seconds): Breach | null;
  cleanInterval(inUseS: Seconds): Breach | null;
  above(upper: Lying, lower: Lying): Breach | null;
  /** Nitrite that is too much for the method, or too little for meat that is kept. */
  cure(ingoing: Ingoing): Breach | null;
  /** Curing is for who has asked the authority; null where the profile asks nobody to. */
  curing(): Breach | null;
};
