import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { DayState, Event } from '../../shared/day/index.ts';
import { emptyDay, fold } from '../../shared/day/index.ts';
import { type Broken, type EventLog, readSqliteLog, stands, walk } from '../store/index.ts';
import { type Archive, archiveOf } from './archive.ts';
import { sealsPass } from './check-chain.ts';
import { createKeeper, startFrom } from './keeper.ts';
import { openRecordStore, type RecordStore, readRecordStore, sealsIn } from './record-store.ts';
import type { Seal } from './seal.ts';
import { passingSigner, type Signer, signerIn } from './signing.ts';

/** A folder's record, read beside its hub or without one. Nothing is written. */
export type ReadArchive = {
  readonly archive: Archive;
  readonly log: EventLog;
  /** Null where the folder has no key yet: then nothing can be signed. */
  readonly signer: Signer | null;
  readonly store: RecordStore;
  /** Where the log breaks, of what was read; null where it holds. */
  readonly broken: Broken | null;
  close(): Promise<void>;
};

/**
 * Opens the record of a folder that has a log. Where days were sealed only what came since is read;
 * else the whole log is.
 */
export async function readArchive(folder: string): Promise<ReadArchive> {
  const log = readSqliteLog(join(folder, 'log.sqlite'));
  const signer = signerIn(folder);
  const kept = join(folder, 'record.sqlite');
  const store = signer && existsSync(kept) ? readRecordStore(kept) : null;
  const start = store && signer ? startFrom(store, signer) : null;
  if (store && start && (await stands(log, start.mark))) {
    let state = start.state;
    const each = (event: Event) => {
      state = fold(state, event);
    };
    const { broken } = await walk(log, each, start.mark);
    return opened({ log, store, signer, broken }, state);
  }
  store?.close();
  return fromFirst(log, signer, sealsIn(kept));
}

/** With what a hub would seal, in memory alone. */
async function fromFirst(
  log: EventLog,
  signer: Signer | null,
  seals: readonly Seal[],
): Promise<ReadArchive> {
  const store = openRecordStore(':memory:');
  const faults: unknown[] = [];
  const keeper = createKeeper({
    ...{ log, store, start: null, nowMs: () => 0, signer: signer ?? passingSigner() },
    report: ({ fault }) => void faults.push(fault),
  });
  let state: DayState = emptyDay();
  const { broken } = await walk(log, (event) => {
    state = fold(state, event);
    keeper.see({ event, state });
  });
  await keeper.rest();
  const [fault] = faults;
  if (fault) throw fault;
  if (seals.length === 0) return opened({ log, store, signer, broken }, state);
  // What was signed once is not signed anew, whatever the log says now.
  const sealOf = (day: string) => seals.findLast((seal) => seal.day === day) ?? null;
  const parts = { log, signer, store: { ...store, seals: () => seals, sealOf } };
  return opened({ ...parts, broken: broken ?? (await otherThanSigned(log, seals)) }, state);
}

async function otherThanSigned(log: EventLog, seals: readonly Seal[]): Promise<Broken | null> {
  const holds = sealsPass(seals);
  for await (const entry of log.read(1)) {
    const why = holds(entry);
    if (why) return { seq: entry.seq, why };
  }
  return null;
}

function opened(parts: Omit<ReadArchive, 'archive' | 'close'>, state: DayState): ReadArchive {
  return {
    ...parts,
    archive: archiveOf(parts.store, () => state),
    async close() {
      parts.store.close();
      await parts.log.close();
    },
  };
}
