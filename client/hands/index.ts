export { heedHands } from './heed-hands.ts';
export { OverLine } from './over-line.ts';
export { wipeGlass } from './wipe.ts';
