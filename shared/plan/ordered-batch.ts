import type { BatchId, Seconds, StepId } from '../kernel/index.ts';
import type { Batch } from './built.ts';
import type { Order } from './order.ts';

/** A batch with the order it is of, how long it sells, and whose trim it is made of. */
export type OrderedBatch = {
  readonly order: Order;
  readonly batch: Batch;
  readonly saleS: Seconds;
  readonly donors: readonly Donor[];
};

/** A batch whose trim another is made of, from the end of the step that leaves it trimmed. */
export type Donor = {
  readonly batch: BatchId;
  readonly trimmedBy: StepId;
  /** How long the trim may lie cold before work on it begins; left out: as long as the plan is. */
  readonly keepsS?: Seconds;
};
