export { type Exact, type ExactOptions, solveExactly } from './exact.ts';
