import type { Mode, Placement } from './model.ts';

/** A placed activity with what an order on its resources must know of it. */
export type Placed = {
  readonly number: number;
  readonly placement: Placement;
  readonly mode: Mode;
  /** Its place in an order that keeps the lags. */
  readonly rank: number;
};
