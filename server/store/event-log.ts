import type { CommandId } from '../../shared/kernel/index.ts';
import type { Answer } from '../../shared/protocol/index.ts';

/**
 * The day-log of one kitchen: entries in the order they were kept, each carrying the hash of the
 * one before, and beside them the answer that every command got. Behind it stands a file, or a
 * medium in memory.
 *
 * Every method may reject with the medium's own error. After a rejected `append` nobody knows
 * whether it was kept: read on from the last known entry to learn it.
 */
export type EventLog = {
  /** Takes the log for one hub: from now on only what is appended under this epoch is kept. */
  claim(epoch: string): Promise<Head>;
  /** All or nothing; when it says ok, it outlasts a power cut. */
  append(batch: Batch): Promise<Appended>;
  /** What this command was answered, also when the answer was a refusal. */
  answerTo(command: CommandId): Promise<Answer | null>;
  head(): Promise<Head>;
  /**
   * Entries from number `fromSeq` on, as stored; rejects in the middle where the medium cannot be
   * read.
   */
  read(fromSeq: number): AsyncIterable<Entry>;
  close(): Promise<void>;
};

/** `bytes` are stored and hashed exactly as given, and never change. */
export type Entry = {
  readonly seq: number;
  readonly commandId: CommandId;
  readonly bytes: Uint8Array;
  /** SHA-256 over the hash before and these bytes, in hexadecimal. */
  readonly hash: string;
};

/** Where the log stands: its last entry (0 when empty), and the hub that may append. */
export type Head = {
  readonly seq: number;
  readonly hash: string;
  readonly epoch: string;
};

export type Batch = {
  readonly expectedSeq: number;
  readonly epoch: string;
  readonly entries: readonly Omit<Entry, 'seq' | 'hash'>[];
  readonly answers: readonly { readonly commandId: CommandId; readonly answer: Answer }[];
};

export type Appended =
  | { readonly ok: true; readonly head: Head }
  /** Another hub has claimed the log since. */
  | { readonly ok: false; readonly why: 'fenced'; readonly epoch: string }
  /** The log is not where the writer thought. */
  | { readonly ok: false; readonly why: 'moved'; readonly seq: number }
  /** A command of this batch has its answer already. */
  | { readonly ok: false; readonly why: 'doubled' };
