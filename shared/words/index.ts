export { clockTime, countPieces, durationWords, temperature, weight } from './amounts.ts';
export { sayOffer } from './offers.ts';
export { sayBecause, sayInHand, saySlot } from './reasons.ts';
export { sayRefusal } from './refusals.ts';
export { type Language, type Say, textIn } from './say.ts';
