export { type Solved, solveExactly } from './exact.ts';
export { genetic, type Scheduled } from './genetic.ts';
export { lowerBound } from './lower-bound.ts';
export { type Precedence, precedenceOf } from './precedence.ts';
export { type Project, projectOf } from './project.ts';
