export { workingHours } from './hours.ts';
export { rackAreaCm2, rackLoadG } from './rack.ts';
export { readKitchen } from './read.ts';
export {
  type Cooler,
  type CrewMember,
  type Kitchen,
  kitchenSchema,
  type Rack,
  type Shift,
  type Smoker,
  type Station,
} from './schema.ts';
export { findSlot, type Slot } from './slots.ts';
