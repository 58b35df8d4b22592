import { join } from 'node:path';
import { readSqliteLog, walk } from '../store/index.ts';
import { sealsPass } from './check-chain.ts';
import { sealsIn } from './record-store.ts';
import { fingerprintOf } from './signing.ts';

export type FolderVerified = {
  readonly broken: { readonly seq: number; readonly was: 'written' | 'signed' } | null;
  readonly entries: number;
  readonly seals: number;
  /** Fingerprints, each once. */
  readonly keys: readonly string[];
  /** Null where none was asked for. */
  readonly hasHead: boolean | null;
};

/** Goes through all of a folder's log, and holds every seal against it. */
export async function verifyFolder(folder: string, head?: string): Promise<FolderVerified> {
  const log = readSqliteLog(join(folder, 'log.sqlite'));
  try {
    const seals = sealsIn(join(folder, 'record.sqlite'));
    const holds = sealsPass(seals);
    let hasHead = head === undefined ? null : false;
    let signed: number | null = null;
    const { seq, broken } = await walk(log, () => {});
    if (seq > 0) {
      for await (const entry of log.read(1)) {
        if (entry.hash === head) hasHead = true;
        if (signed === null && holds(entry)) signed = entry.seq;
        if (entry.seq >= seq) break;
      }
    }
    const beyond = seals.find(({ lastSeq }) => lastSeq > seq);
    const keys = [...new Set(seals.map(({ key }) => fingerprintOf(key)))];
    const told = { entries: seq, seals: seals.length, keys, hasHead };
    if (broken) return { ...told, broken: { seq: broken.seq, was: 'written' } };
    const at = signed ?? beyond?.lastSeq ?? null;
    return { ...told, broken: at === null ? null : { seq: at, was: 'signed' } };
  } finally {
    await log.close();
  }
}
