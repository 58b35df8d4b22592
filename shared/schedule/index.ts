export { chain } from './chain.ts';
export { check } from './check.ts';
export { construct } from './construct.ts';
export type * from './model.ts';
export { createTimeline } from './timeline.ts';
export type * from './timeline-types.ts';
export { validate } from './validate.ts';
export type { Violation } from './violation.ts';
export { type Question, why } from './why.ts';
