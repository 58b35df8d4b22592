import type { PlanFiles } from '../shared/plan/index.ts';
import type { LimitsChange } from '../shared/safety/index.ts';

/** What a day is planned from, and how the kitchen's limits came to be other than delivered. */
export type DayFiles = PlanFiles & { readonly limitChanges?: readonly LimitsChange[] };
