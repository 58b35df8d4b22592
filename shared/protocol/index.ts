export * from './link.ts';
export * from './messages.ts';
export { messageSchemas } from './schema.ts';
