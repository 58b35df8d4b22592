import { readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { z } from 'zod';

/** Who has a kitchen's folder open. */
export type Holder = z.infer<typeof holderSchema>;

const holderSchema = z.object({
  pid: z.int(),
  host: z.string(),
  /** UTC, ISO 8601. */
  since: z.string(),
  /** Where its screens are; null until its door is open. */
  address: z.string().nullable(),
});

export type Locked =
  | {
      readonly ok: true;
      /** Writes down anew who holds it, once more is known. */
      say(holder: Holder): void;
      release(): void;
    }
  /** `holder` is null when it took the lock a moment ago and has not yet said who it is. */
  | { readonly ok: false; readonly holder: Holder | null };

/** A lock that nobody holds on to would be collected, closed and so let go. */
const held = new Set<Database.Database>();

/**
 * Takes a folder for this process alone. The lock is the operating system's own, on a file that
 * SQLite holds open, so that it ends with the process however that ends; the note beside it only
 * says whose it is.
 */
export function lockFolder(folder: string, holder: Holder): Locked {
  const note = join(folder, 'holder.json');
  const db = new Database(join(folder, 'lock.sqlite'), { timeout: 0 });
  try {
    db.exec('begin exclusive');
  } catch (fault) {
    db.close();
    if (!isBusy(fault)) throw fault;
    return { ok: false, holder: readHolder(note) };
  }
  const say = (who: Holder) => {
    // By renaming, so that nobody ever reads half a note.
    writeFileSync(`${note}.new`, `${JSON.stringify(who, null, 2)}\n`);
    renameSync(`${note}.new`, note);
  };
  say(holder);
  held.add(db);
  const release = () => {
    held.delete(db);
    db.close();
  };
  return { ok: true, say, release };
}

function isBusy(fault: unknown): boolean {
  return fault instanceof Database.SqliteError && fault.code.startsWith('SQLITE_BUSY');
}

function readHolder(note: string): Holder | null {
  try {
    return holderSchema.parse(JSON.parse(readFileSync(note, 'utf8')));
  } catch {
    return null;
  }
}
