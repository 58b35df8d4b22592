export * from './link.ts';
export * from './messages.ts';
