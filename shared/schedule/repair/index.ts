export type { Difference } from './differences.ts';
export { type Repair, type RepairOptions, type Rung, repair } from './ladder.ts';
export { savedS, type Trouble, troubleOf } from './trouble.ts';
