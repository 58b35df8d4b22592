import { boundOf } from './bound/index.ts';
import {
  type Conflicting,
  type ConflictingOptions,
  conflicting,
  type Judge,
} from './conflicting/index.ts';
import { solveExactly } from './exact/index.ts';
import type { Problem } from './model.ts';
import { netAiming, search } from './search.ts';
import { validate } from './validate.ts';
import { measureOf } from './worth.ts';

const SEED = 1;
const ATTEMPTS = 2;
/** A proof is tried with so many nodes, on days that have few enough activities left. */
const NODES_MOST = 400;
const PROVABLE_MOST = 60;

/**
 * The smallest set of things a day asks for that cannot all be kept, proven where propagation or a
 * small tree proves it. `undefined` for a day that can be planned. Expects a well-formed problem.
 */
export function whatConflicts(
  problem: Problem,
  options: ConflictingOptions,
): Conflicting | undefined {
  return conflicting(problem, judge, options);
}

const judge: Judge = (problem) => {
  if (problem.activities.length === 0) return 'can';
  if (validate(problem).length > 0) return 'cannot';
  const lateS = problem.goals.map(() => 0);
  const { net } = netAiming(problem, { aim: 0, lateS });
  // Lags and hours together leave no time, whoever does what.
  if (net && boundOf(net, measureOf(problem)) === undefined) return 'cannot';
  if (search(problem, { seed: SEED, lateS, attempts: ATTEMPTS }).ok) return 'can';
  if (!net || problem.activities.length > PROVABLE_MOST) return 'no-plan-found';
  const { status, slots } = solveExactly(net, measureOf(problem), { nodesMost: NODES_MOST });
  if (slots) return 'can';
  return status === 'proven' ? 'cannot' : 'no-plan-found';
};
