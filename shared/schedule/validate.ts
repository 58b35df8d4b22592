import { unfillable } from './fillable.ts';
import { malformed } from './malformed.ts';
import type { Conflict, Problem } from './model.ts';
import { untimely } from './timely.ts';

/**
 * What is wrong with a problem before any search: ids and numbers first, then needs that nothing
 * could fill on an empty day, then times that cannot all hold. Empty for a problem worth planning.
 * @example validate({ horizonS: -1, activities: [], lags: [], resources: [], clashes: [], goals: []
 * }) //=> [{ kind: 'malformed', where: 'horizonS', what: 'is -1, not a whole number from 0' }]
 */
export function validate(problem: Problem): Conflict[] {
  const faults = malformed(problem);
  if (faults.length > 0) return faults;
  const unfilled = unfillable(problem);
  return unfilled.length > 0 ? unfilled : untimely(problem);
}
