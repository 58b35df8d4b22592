export type { Text } from '../kernel/index.ts';
export type * from './built.ts';
export type * from './names.ts';
export {
  fireOf,
  fireState,
  type KitchenResource,
  kitchenResource,
  resourceId,
} from './resources.ts';
export { type CookPlan, cookPlanSchema, type PlannedDish, type Sales } from './schema.ts';
