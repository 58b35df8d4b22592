export * from './link.ts';
export * from './messages.ts';
export type * from './plan-doors.ts';
export { planSchemas } from './plan-schema.ts';
export { readingsOfCsv, readingsSchema, type SentReading } from './readings-schema.ts';
export { type PlanDeed, type Right, rights, roleOf, whyNotShown } from './rights.ts';
export { messageSchemas } from './schema.ts';
export * from './who.ts';
export { whoSchemas } from './who-schema.ts';
