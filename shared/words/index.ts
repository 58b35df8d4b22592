export { clockTime, countPieces, durationWords, temperature, weight } from './amounts.ts';
export { clockRange } from './clock-range.ts';
export type { Interface } from './interface.ts';
export { sayOffer } from './offers.ts';
export { sayBecause, sayInHand, saySlot } from './reasons.ts';
export { sayRefusal } from './refusals.ts';
export { type Language, type Say, textIn } from './say.ts';
export { type ConflictNames, sayConflict, sayPlanRefusal } from './say-plan.ts';
export { ui } from './ui.ts';
