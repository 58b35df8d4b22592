export type { Ask, Brought } from './ask.ts';
export type { Start } from './book.ts';
export { type Health, type Hub, openHub } from './hub.ts';
export type { Asker, DayRules, Kept, RunningDay, Shown } from './rules.ts';
