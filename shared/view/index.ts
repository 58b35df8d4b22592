export type { Command, Intent, Refusal } from '../day/index.ts';
export type { PersonName, SlotName, SmokerName, TaskName, Text } from '../plan/index.ts';
export type * from './view.ts';
