import type { BatchId, DayId, DishId, Instant, StationId, Text } from '../kernel/index.ts';
import type { FoodKind } from '../plan/index.ts';
import type { CheckEntry } from './check-event.ts';

/** What a day kept for others and what was still cooling when it ended. */
export type Leftover = {
  /** The batch with its day, since each day names its batches anew. */
  readonly batch: BatchId;
  readonly name: Text;
  readonly day: DayId;
  readonly dish: DishId;
  readonly food: FoodKind;
  /** When its cooling began, which is when it was kept. */
  readonly from: Instant;
  readonly station: StationId;
  /** What was looked at of it so far. */
  readonly said: readonly CheckEntry[];
};
