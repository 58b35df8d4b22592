export type { Brought } from './ask.ts';
export { type Health, type Hub, openHub } from './hub.ts';
export type { DayRules, Kept, RunningDay, Shown } from './rules.ts';
