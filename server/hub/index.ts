export type { Brought } from './ask.ts';
export { type Health, type Hub, openHub } from './hub.ts';
export type { DayRules, RunningDay, Shown } from './rules.ts';
