import type { Arcs } from './network.ts';
import type { Ties } from './ties.ts';

/**
 * A problem made ready for search: numbers for ids, arcs for lags, bounds for dates. Everything in
 * it can be seen in a mirror (see `mirrored`), so that planning backward from the goals is
 * planning forward with the clock turned round.
 */
export type Net = {
  /** How many activities; each has two nodes. */
  readonly size: number;
  /** 1 for a node that a goal, a deadline or a pin puts a date on. */
  readonly dated: Uint8Array;
  readonly arcs: Arcs;
  readonly ties: Ties;
  /** Bounds of each node from releases, deadlines, goals, pins and the horizon. */
  readonly loS: Int32Array;
  readonly hiS: Int32Array;
  readonly modes: readonly (readonly NetMode[])[];
  readonly resources: readonly NetResource[];
  readonly clashes: readonly NetClash[];
  /** The clashes an activity has a part in. */
  readonly clashesOf: readonly (readonly number[])[];
};

export type NetMode = {
  /** Its place among the activity's modes. */
  readonly index: number;
  readonly minS: number;
  readonly maxS: number;
  readonly needs: readonly NetNeed[];
  readonly states: readonly { readonly resource: number; readonly state: number }[];
  /** What a state that a resource is in at the beginning asks; else far away. */
  readonly startLoS: number;
  readonly endHiS: number;
  /** Pinned in time, so not held to calendars. */
  readonly anyHour: boolean;
};

export type NetNeed = { readonly amount: number; readonly resources: readonly number[] };

export type NetResource = {
  /** 0 for a state resource. */
  readonly capacity: number;
  /** Starts and ends by turns; undefined: always open. */
  readonly spans: Int32Array | undefined;
  /** How long it is open in all. */
  readonly openS: number;
  /** Seconds from state to state, `from * states + to`; empty for a capacity. */
  readonly changeS: Int32Array;
  readonly states: number;
};

/** A moment of an activity, counted from one of its ends. */
export type Moment = { readonly end: 0 | 1; readonly offsetS: number };

export type NetPart = {
  readonly activity: number;
  readonly begin: Moment;
  readonly finish: Moment;
};

export type NetClash = {
  readonly upper: NetPart;
  readonly lower: NetPart;
  /** Pairs of places as `upper * resources + lower`. */
  readonly pairs: ReadonlySet<number>;
};

/** Where an activity is put. */
export type Slot = {
  readonly mode: NetMode;
  readonly startS: number;
  readonly endS: number;
  /** For each need of the mode, its resource. */
  readonly uses: readonly number[];
};

/** Within what to look for a slot. */
export type Window = {
  readonly startLoS: number;
  readonly startHiS: number;
  readonly endLoS: number;
  readonly endHiS: number;
};

/** Further off than any day, and still far from where sums of whole numbers overflow. */
export const FAR_S = 1 << 29;
