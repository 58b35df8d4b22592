import type { Celsius, Seconds } from '../kernel/index.ts';
import type { AirPoint } from './air-curve.ts';
import type { Message } from './belief.ts';
import type { CutPrior } from './cut-priors.ts';
import type { Opening } from './openings.ts';
import type { Room, WrapName } from './rooms.ts';
import type { Sides } from './shape.ts';
import type { SmokerPrior } from './smoker-priors.ts';

/**
 * A smoker over the time that a piece is in it. Every time is in seconds from when the piece went
 * in.
 */
export type Smoker = {
  /** Smokers of one id are one smoker. */
  readonly id: string;
  readonly prior: SmokerPrior;
  /** Where the fire is set to from the last entry of the log on. */
  readonly setC: Celsius;
  /** The air as it was, in order of time. */
  readonly log: readonly AirPoint[];
  /** When its door was opened, and for how long, as far as somebody told. */
  readonly doors: readonly Opening[];
  readonly pressurePa?: number;
  /** What the other pieces of today say of it. */
  readonly heard?: readonly Message[];
};

/** The smoker that the cook is about, another one it is moved to, or a room. */
export type Place =
  | { readonly kind: 'home' }
  | { readonly kind: 'smoker'; readonly smoker: Smoker }
  | { readonly kind: 'room'; readonly room: Room };

/** Where a piece is, and in what, from a moment on. */
export type Stay = {
  readonly from:
    | { readonly by: 'time'; readonly atS: Seconds }
    | { readonly by: 'core'; readonly tempC: Celsius };
  readonly place: Place;
  readonly wrap: WrapName;
};

/** What is waited for: that the thermometer shows so much, on the way up or, after that, down. */
export type Target = {
  readonly id: string;
  readonly tempC: Celsius;
  readonly way: 'rising' | 'falling';
};

export type Piece = {
  readonly cut: CutPrior;
  readonly sides: Sides;
  readonly startC: Celsius;
  /** What has been done with it and what is meant to be, in order; the first begins at 0. */
  readonly stays: readonly Stay[];
  readonly targets: readonly Target[];
};

/** A core temperature as somebody took it, or as a probe that stays in sent it. */
export type Reading = {
  readonly atS: Seconds;
  readonly tempC: Celsius;
  readonly by: 'probe' | 'hand';
};
