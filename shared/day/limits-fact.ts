import type { HeldTo, LimitsChange } from '../safety/index.ts';

/** Other limits than those of the last day, and what was said of why. */
export type LimitsFact = {
  readonly kind: 'limitsChanged';
  readonly from: LimitsName;
  readonly to: LimitsName;
  readonly changes: readonly Pick<LimitsChange, 'why' | 'by'>[];
};

/** A profile of limits, as one version has it. */
export type LimitsName = Pick<HeldTo, 'id' | 'version'>;
