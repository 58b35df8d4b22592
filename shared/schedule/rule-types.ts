import type { Facts } from './facts.ts';
import type { LiveArcs } from './live-arcs.ts';

/** Whom to believe: all, or only those that do not hang on the node itself. */
export type Trust = 'all' | 'others';

/** Somebody who hangs on the node `self`, and asks it for more by an arc or by its length. */
export type Doubt = { readonly self: number; readonly from: number; readonly by: number };

export type RuleOptions = {
  readonly arcs: LiveArcs;
  readonly facts: Facts;
  readonly floorS: Int32Array;
  /** Left out: yes. */
  readonly heedsMaxima?: boolean;
};
