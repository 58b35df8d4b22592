import type { CommandId } from '../../shared/kernel/index.ts';
import type { Answer } from '../../shared/protocol/index.ts';
import { EMPTY_HEAD } from './chain.ts';
import type { Batch, Entry, Head } from './event-log.ts';

/** One all-or-nothing write. */
export type Transaction = {
  readonly head: Head;
  readonly entries: readonly Entry[];
  readonly answers: Batch['answers'];
};

/**
 * What is left when a process dies, and what is left when the power goes: a commit sits in a cache
 * until it is synced. The two settings are what a careless store gets wrong; a simulation must be
 * able to plant them.
 */
export type MemoryDisk = {
  /** `unique`: a command has one answer for ever. `any`: as if the key had been forgotten. */
  readonly keys: 'unique' | 'any';
  readonly head: () => Head;
  readonly entries: () => readonly Entry[];
  readonly answerTo: (command: CommandId) => Answer | null;
  commit(transaction: Transaction): void;
  /** Does nothing on a disk that lies about it. */
  sync(): void;
  /** Everything not synced is gone. */
  cutPower(): void;
  /** Changes what is stored behind the log's back. */
  damage(change: (entries: Entry[]) => void): void;
};

export function memoryDisk({
  keys = 'unique' as MemoryDisk['keys'],
  syncs = true,
} = {}): MemoryDisk {
  const written: Transaction[] = [];
  let syncedCount = 0;
  let entries: Entry[] = [];
  let answers = new Map<CommandId, Answer>();

  function lay({ entries: added, answers: given }: Transaction) {
    entries.push(...added);
    for (const { commandId, answer } of given) answers.set(commandId, answer);
  }

  return {
    keys,
    head: () => written.at(-1)?.head ?? EMPTY_HEAD,
    entries: () => entries,
    answerTo: (command) => answers.get(command) ?? null,
    commit: (transaction) => {
      written.push(transaction);
      lay(transaction);
    },
    sync: () => {
      if (syncs) syncedCount = written.length;
    },
    cutPower: () => {
      written.length = syncedCount;
      entries = [];
      answers = new Map();
      for (const transaction of written) lay(transaction);
    },
    damage: (change) => change(entries),
  };
}
