import type { Hours } from './hours.ts';
import type { Groups } from './network.ts';

/**
 * What never changes in a live day, apart from its arcs. It faces forward for earliest times; seen
 * in a mirror (`mirroredLive`) it gives latest times. Facing either way, an activity has a near
 * end, reached first, and a far end: `near` is its start when facing forward, its end when
 * backward.
 */
export type LiveNet = {
  readonly facing: 'forward' | 'backward';
  readonly size: number;
  /** Facing forward: what a published time yields to, so that a maximum lag holds. */
  readonly ceilings: Ceilings;
  /** Not before, whatever the arcs say; `UNBOUND` for none. */
  readonly hardS: Int32Array;
  /** Published times; facing backward they mean nothing. */
  readonly plannedS: Int32Array;
  readonly hours: readonly (Hours | undefined)[];
  /** 1 for work, 0 for a wait. */
  readonly isWork: Uint8Array;
  /** An order that mostly follows the arcs: where in it an activity is. */
  readonly rank: Int32Array;
  /** Activities in that order. */
  readonly order: Int32Array;
  /** The strong component of each activity: only within one can an arc come back. */
  readonly component: Int32Array;
  /** How many activities are in each component. */
  readonly members: Int32Array;
};

/** Once `from` is early, `to` does not wait for its published time beyond `mostS` after it. */
export type Ceilings = {
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly mostS: Int32Array;
  readonly out: Groups;
  readonly into: Groups;
};

/** Earlier than any time. */
export const UNBOUND = -(1 << 30);
