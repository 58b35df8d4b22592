export { EMPTY_HEAD, linkHash } from './chain.ts';
export { fromBytes, toBytes } from './entry-bytes.ts';
export type { Appended, Batch, Entry, EventLog, Head } from './event-log.ts';
export { type Holder, type Locked, lockFolder } from './lock.ts';
export { type MemoryDisk, memoryDisk } from './memory-disk.ts';
export {
  LogGone,
  type OnWriteStep,
  openMemoryLog,
  WRITE_STEPS,
  type WriteStep,
} from './memory-log.ts';
export { NotOurLog, openSqliteLog, readSqliteLog } from './sqlite-log.ts';
export { type Broken, type Mark, retrace, stands, type Walked, walk } from './walk.ts';
