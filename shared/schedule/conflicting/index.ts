export {
  type Conflicting,
  type ConflictingOptions,
  conflicting,
  type Judge,
} from './conflicting.ts';
export type { Demand } from './demands.ts';
