import type { Link, Placement } from '../schedule/index.ts';

/** A person took a repair: these are done so and then, and everything in that order. */
export type MendFact = {
  readonly kind: 'dayMended';
  readonly changes: readonly Placement[];
  readonly links: readonly Link[];
};
