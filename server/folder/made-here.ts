import { readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';

/** What a hub makes beside a kitchen's own files; SQLite puts some beside its own. */
const OURS = /^(?:(?:log|keys|record)\.sqlite(?:-wal|-shm|-journal)?|sign\.key|clock\.json|tls)$/;
/** What SQLite puts beside a file is part of it: taken from an old log, it takes taps with it. */
const BESIDE = /-(?:wal|shm|journal)$/;
/** Who holds the folder. It is true only while somebody does. */
const HOLDER = /^holder\.json(?:\.new)?$/;

/**
 * Takes out of a folder again what a start made there that came to nothing: no log of a day that
 * never was, no key that never signed. What lay there before stays, and so does the lock, which
 * another may wait at.
 */
export function madeHere(folder: string): { takeOut(): void } {
  const before = new Set(readdirSync(folder));
  // Where days lay, a new key may have signed one of them by now.
  if (before.has('log.sqlite') || before.has('record.sqlite')) before.add('sign.key');
  return {
    takeOut() {
      for (const name of readdirSync(folder)) {
        const isNew = OURS.test(name) && !before.has(name.replace(BESIDE, ''));
        if (isNew || HOLDER.test(name)) rmSync(join(folder, name), { recursive: true });
      }
    },
  };
}
