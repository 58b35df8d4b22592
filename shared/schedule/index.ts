export { chain } from './chain.ts';
export { check } from './check.ts';
export { construct } from './construct.ts';
export type * from './model.ts';
export { validate } from './validate.ts';
export type { Violation } from './violation.ts';
