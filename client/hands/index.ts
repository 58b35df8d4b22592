export { heedHands } from './heed-hands.ts';
export { wipeGlass } from './wipe.ts';
