export type * from './adopted-plan.ts';
export type * from './command.ts';
export type * from './event.ts';
export type * from './refusal.ts';
