export type { Text } from '../kernel/index.ts';
export { taskId } from './activities.ts';
export { build } from './build.ts';
export type * from './built.ts';
export { mixLine } from './lists.ts';
export type * from './names.ts';
export { planDay } from './plan-day.ts';
export { type PlanFileFault, type PlanFiles, readCookPlan, readPlanFiles } from './read.ts';
export type { PlanRefusal, Unfit } from './refusal.ts';
export {
  fireOf,
  fireState,
  type KitchenResource,
  kitchenResource,
  resourceId,
} from './resources.ts';
export { type CookPlan, cookPlanSchema, type PlannedDish, type Sales } from './schema.ts';
export { unknownInKitchen } from './unknown.ts';
export { rawFor, type Weights, weightsOf } from './weights.ts';
export { type ButchersTest, butchersTest, cutTest } from './yield-test.ts';
