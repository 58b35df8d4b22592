import type { Planned, Planner, Problem } from '../schedule/index.ts';

/** The same planner, which answers what it was asked before from memory. */
export function remembering(planner: Planner): Planner {
  const answers = new WeakMap<Problem, Planned>();
  return (problem, options) => {
    const answer = answers.get(problem) ?? planner(problem, options);
    answers.set(problem, answer);
    return answer;
  };
}
