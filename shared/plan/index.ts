export type * from './built.ts';
export type * from './names.ts';
export { type KitchenResource, kitchenResource, resourceId } from './resources.ts';
