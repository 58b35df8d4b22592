export type { ChainCheck } from './check-chain.ts';
export { type OpenRecord, openRecord } from './open-record.ts';
