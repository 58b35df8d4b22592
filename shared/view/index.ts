export type { Command, Intent, Refusal } from '../day/index.ts';
export type { PersonName, SlotName, SmokerName, TaskName, Text } from '../plan/index.ts';
export { moveTimes } from './alone.ts';
export { drawnView } from './drawn.ts';
export { type Drawn, loadMark, type Mark, overlay, type PendingTap } from './overlay.ts';
export type * from './view.ts';
export { type Face, viewOf } from './view-of.ts';
