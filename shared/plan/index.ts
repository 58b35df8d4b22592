export type { Text } from '../kernel/index.ts';
export { type Bettering, betterDay, bettered, type DayBettered } from './better-day.ts';
export { type BuildOf, build } from './build.ts';
export type * from './built.ts';
export { NOT_SKIPPED, skippedTimes, type TimeTwice, timesTwice } from './clock-changes.ts';
export {
  askingFor,
  clockBetween,
  type DishAt,
  edited,
  openingLater,
  type PlanEdit,
  portionsIn,
  writtenOut,
} from './edits.ts';
export { atPaces, type HandTimes, type Pace, paceKey, withTimes } from './hand-times.ts';
export { type Ingoing, ingoing } from './ingoing.ts';
export { type Keeping, keepingOf } from './keeping-batches.ts';
export { A_READING_S } from './lethality.ts';
export type { Breach, FoodKind, LimitRow, Limits } from './limits.ts';
export { mixLine } from './lists.ts';
export type * from './names.ts';
export { type DayPlanned, planDay } from './plan-day.ts';
export { type PlanFileFault, type PlanFiles, readCookPlan, readPlanFiles } from './read.ts';
export type { PlanRefusal, Unfit } from './refusal.ts';
export {
  fireOf,
  fireState,
  type KitchenResource,
  kitchenResource,
  resourceId,
} from './resources.ts';
export { type Better, type Revised, type Revision, revise, type Standing } from './revise.ts';
export {
  type CookPlan,
  cookPlanSchema,
  type PlannedBatch,
  type PlannedDish,
  type Sales,
} from './schema.ts';
export { type Shut, withShut } from './shut.ts';
export { taskId } from './task-id.ts';
export { unknownInKitchen } from './unknown.ts';
export { rawFor, type Weights, weightsOf } from './weights.ts';
export { type ButchersTest, butchersTest, cutTest } from './yield-test.ts';
