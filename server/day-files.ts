import type { Pace, PlanFiles } from '../shared/plan/index.ts';
import type { LimitsChange } from '../shared/safety/index.ts';

/** What a day is planned from, and how the kitchen came to be other than its catalogue has it. */
export type DayFiles = PlanFiles & {
  readonly limitChanges?: readonly LimitsChange[];
  /** How fast its hands are, where that is on record. */
  readonly paces?: readonly Pace[];
};
