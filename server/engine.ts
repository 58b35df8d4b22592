import { assert } from '../shared/kernel/index.ts';
import {
  chain,
  check,
  construct,
  improve,
  type Problem,
  type Schedule,
} from '../shared/schedule/index.ts';

/** What plans are made with. */
export const ENGINES = { planner: construct, improve, chain, check };
export const SEED = 1;

/** Written into every plan, so that a replay knows which engine it came from. */
export const CONSTRUCTIVE = 'constructive 1';
/** The same of a plan that was improved. */
export const IMPROVING = 'improving 1';

/** No schedule is published that the independent checker has a word against. */
export function mustKeep(problem: Problem, schedule: Schedule): void {
  const violations = check(problem, schedule);
  assert(violations.length === 0, `the schedule breaks ${JSON.stringify(violations[0])}`);
}
