import { type FSWatcher, mkdirSync, watch } from 'node:fs';
import { join } from 'node:path';
import type { Report } from '../report.ts';

/** An editor writes a file in several goes; this long after the last of them it is read. */
const QUIET_MS = 300;

/** Calls back after files of a kitchen were changed; gives the way to stop. */
export function watchFolder(folder: string, onChange: () => void, report: Report): () => void {
  let quiet: NodeJS.Timeout | undefined;
  const plans = join(folder, 'plans');
  mkdirSync(plans, { recursive: true });

  function changed(_kind: string, name: string | null) {
    // The log beside the files changes with every tap.
    if (name !== null && !name.endsWith('.json')) return;
    if (name === 'holder.json' || name === 'clock.json') return;
    clearTimeout(quiet);
    quiet = setTimeout(onChange, QUIET_MS);
  }

  const watchers = [folder, plans].map((path): FSWatcher => {
    const watcher = watch(path, { persistent: false }, changed);
    watcher.on('error', (fault) =>
      report({ level: 'warning', what: 'changes of files are not noticed', path, fault }),
    );
    return watcher;
  });
  return () => {
    clearTimeout(quiet);
    for (const watcher of watchers) watcher.close();
  };
}
