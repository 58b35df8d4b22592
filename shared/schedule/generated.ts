import type { Random } from '../kernel/index.ts';
import type { NetMode, Slot, Window } from './net.ts';

/** In which order activities are placed, and how long the attempt may last. */
export type Attempt = {
  /** By what is possible soonest, by what is wanted soonest, or by a list of keys. */
  readonly order: 'soonest' | 'urgent' | ArrayLike<number>;
  /** Up to so much is added to each key by chance. */
  readonly noiseS: number;
  readonly random: Random;
  /** Activities that found no room in earlier attempts go this much earlier. */
  readonly boostS: ArrayLike<number>;
  readonly stepsMost: number;
  /** Leave all others out. */
  readonly only?: ReadonlySet<number>;
  /** Slots to begin with; they may still be pushed later. */
  readonly placed?: readonly (Slot | undefined)[];
};

export type Generated =
  | { readonly ok: true; readonly slots: readonly (Slot | undefined)[] }
  | { readonly ok: false; readonly failure: Failure };

/** Who found no room, and within what. */
export type Failure = {
  readonly activity: number;
  readonly mode: NetMode;
  readonly window: Window;
  /** The need that finds nothing in the window, undefined: none by itself, or it is a state. */
  readonly need: number | undefined;
  /** How much later it could be placed, were it allowed to; undefined: never. */
  readonly shortS: number | undefined;
  readonly blockers: readonly number[];
};
