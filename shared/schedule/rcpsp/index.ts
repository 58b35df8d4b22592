export { type Solved, solveExactly } from './exact.ts';
export { genetic, type Scheduled } from './genetic.ts';
export { heads, precedenceOf } from './precedence.ts';
export { type Project, projectOf } from './project.ts';
