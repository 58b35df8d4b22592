export { chain } from './chain.ts';
export { check } from './check.ts';
export type { Conflicting, Demand } from './conflicting/index.ts';
export { construct } from './construct.ts';
export { type Improved, type ImproveOptions, improve } from './improve.ts';
export { inHandIf } from './in-hand-if.ts';
export type * from './model.ts';
export {
  type Difference,
  type Repair,
  type Rung,
  repair,
  savedS,
  type Trouble,
  troubleOf,
} from './repair/index.ts';
export { createTimeline } from './timeline.ts';
export { timelineAfter } from './timeline-after.ts';
export type * from './timeline-types.ts';
export { validate } from './validate.ts';
export type { Violation } from './violation.ts';
export { whatConflicts } from './what-conflicts.ts';
export { type Question, why } from './why.ts';
export type { Worth } from './worth.ts';
