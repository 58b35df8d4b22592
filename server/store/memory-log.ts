import { linkHash } from './chain.ts';
import type { Appended, Batch, Entry, EventLog, Head } from './event-log.ts';
import type { MemoryDisk, Transaction } from './memory-disk.ts';

/** The moments of one write between which a hub can die. */
export const WRITE_STEPS = ['begun', 'written', 'committed', 'synced'] as const;
export type WriteStep = (typeof WRITE_STEPS)[number];

/**
 * Told as each moment is reached; may take its time, or throw: then this log is dead, as after a
 * kill.
 */
export type OnWriteStep = (step: WriteStep) => void | Promise<void>;

/** The log was used after its hub died or closed it. */
export class LogGone extends Error {
  override readonly name = 'LogGone';
}

/** The log on a disk in memory, for tests and simulations of what a disk and a power cut can do. */
export function openMemoryLog(disk: MemoryDisk, onStep: OnWriteStep = () => {}): EventLog {
  let gone = false;
  const alive = () => {
    if (gone) throw new LogGone('this log is closed');
  };

  async function step(name: WriteStep) {
    try {
      await onStep(name);
    } catch (death) {
      gone = true;
      throw death;
    }
    alive();
  }

  async function commit(transaction: Transaction) {
    disk.commit(transaction);
    await step('committed');
    disk.sync();
    await step('synced');
  }

  return {
    claim: async (epoch) => {
      alive();
      const head = { ...disk.head(), epoch };
      disk.commit({ head, entries: [], answers: [] });
      disk.sync();
      return head;
    },
    append: async (batch) => {
      alive();
      await step('begun');
      const refused = refuse(disk, batch);
      if (refused) return refused;
      await step('written');
      const transaction = follow(disk.head(), batch);
      await commit(transaction);
      return { ok: true, head: transaction.head };
    },
    answerTo: async (command) => {
      alive();
      return disk.answerTo(command);
    },
    head: async () => {
      alive();
      return disk.head();
    },
    async *read(fromSeq) {
      alive();
      yield* disk.entries().filter(({ seq }) => seq >= fromSeq);
    },
    close: async () => {
      gone = true;
    },
  };
}

function refuse(disk: MemoryDisk, { expectedSeq, epoch, answers }: Batch): Appended | null {
  const head = disk.head();
  if (head.epoch !== epoch) return { ok: false, why: 'fenced', epoch: head.epoch };
  if (head.seq !== expectedSeq) return { ok: false, why: 'moved', seq: head.seq };
  if (disk.keys === 'any') return null;
  const ids = new Set(answers.map(({ commandId }) => commandId));
  const doubled = ids.size < answers.length || [...ids].some((id) => disk.answerTo(id) !== null);
  return doubled ? { ok: false, why: 'doubled' } : null;
}

function follow(from: Head, { entries, answers }: Batch): Transaction {
  let head = from;
  const placed = entries.map(({ commandId, bytes }): Entry => {
    head = { ...head, seq: head.seq + 1, hash: linkHash(head.hash, bytes) };
    return { seq: head.seq, hash: head.hash, commandId, bytes };
  });
  return { head, entries: placed, answers };
}
