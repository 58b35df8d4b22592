import { mkdtempSync, rmSync } from 'node:fs';
import { hostname, tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { instant } from '../../shared/kernel/index.ts';
import { CannotStart } from '../cannot-start.ts';
import type { Closing } from '../closing.ts';
import { demoFiles } from '../demo/index.ts';
import type { FolderChoice } from '../options.ts';
import { starterFiles } from '../starter/index.ts';
import {
  type EventLog,
  type Holder,
  lockFolder,
  NotOurLog,
  openSqliteLog,
} from '../store/index.ts';
import { unusableDisk } from '../unusable-disk.ts';
import { type FirstFiles, furnish } from './furnish.ts';
import { madeHere } from './made-here.ts';
import { keepSchemas } from './schemas.ts';

const NOW_IN_IT: Readonly<Record<FolderChoice['kind'], string>> = {
  kitchen:
    ', which was empty: a small kitchen and its plan for tomorrow are in it now, for you to ' +
    'change. docs/your-kitchen.md says how.',
  demo: ', which was empty: the demo’s kitchen, catalogue and plan are in it now.',
};

/** A kitchen's folder, held by this process alone. */
export type OpenFolder = {
  readonly path: string;
  readonly log: EventLog;
  /** Said to whoever opens it, for a person to read. */
  readonly lines: readonly string[];
  /**
   * Tells a second hub where the screens of this one are. From then on taps may be in the log, and
   * whatever else fails, nothing that was made is taken out again.
   */
  sayAddress(address: string): void;
};

/**
 * Opens the folder that was chosen, gives it a kitchen if it is empty, and keeps every other hub
 * out of it.
 */
export function openFolder(choice: FolderChoice, closing: Closing): OpenFolder {
  const path = choice.path === null ? passingFolder(closing) : resolve(choice.path);
  const furnished = furnishedOrNot(path, choice);
  if (furnished === 'foreign') {
    throw new CannotStart(`${path} holds other things and no kitchen.json: name an empty folder.`);
  }
  const holder: Holder = {
    pid: process.pid,
    host: hostname(),
    since: new Date().toISOString(),
    address: null,
  };
  const lock = lockFolder(path, holder);
  if (!lock.ok) throw new CannotStart(heldBy(path, lock.holder));
  closing.add(lock.release);
  const made = madeHere(path);
  let isServed = false;
  closing.add(() => {
    if (!isServed) made.takeOut();
  });
  keepSchemas(path);
  const log = openLog(join(path, 'log.sqlite'));
  closing.add(log.close);
  return {
    path,
    log,
    lines: [
      choice.path === null
        ? `A demo, thrown away at the end. (${path})`
        : `Kept in ${path}${furnished === 'furnished' ? NOW_IN_IT[choice.kind] : '.'}`,
    ],
    sayAddress(address) {
      isServed = true;
      lock.say({ ...holder, address });
    },
  };
}

/** A path that cannot be a kitchen's folder is said, with what is to be named instead. */
function furnishedOrNot(path: string, choice: FolderChoice) {
  try {
    return furnish(path, () => firstFiles(choice));
  } catch (fault) {
    const { code = '', message } = fault as NodeJS.ErrnoException;
    if (code === 'EEXIST' || code === 'ENOTDIR') {
      throw new CannotStart(`${path} is, or lies in, a file: name a folder.`);
    }
    if (code === 'EACCES' || code === 'EPERM' || code === 'EROFS') {
      throw new CannotStart(`${path} may not be written to: name a folder of your own.`);
    }
    if (code === '') throw fault;
    const told = unusableDisk(path, fault);
    if (told) throw told;
    // So Node names a disk that is not written to, too.
    if (code === 'ENOENT') {
      throw new CannotStart(`${path} cannot be made where it would lie: name another folder.`);
    }
    throw new CannotStart(`${path} cannot be used: ${message}. Name another folder.`);
  }
}

/** What an empty folder is given: of today, or for tomorrow, and of here. */
function firstFiles(choice: FolderChoice): FirstFiles {
  const { timeZone } = Intl.DateTimeFormat().resolvedOptions();
  const now = instant(Date.now());
  return choice.kind === 'demo'
    ? demoFiles(now, timeZone)
    : starterFiles(now, timeZone, choice.from ?? 'three dishes');
}

function passingFolder(closing: Closing): string {
  const path = mkdtempSync(join(tmpdir(), 'coalface-demo-'));
  closing.add(() => rmSync(path, { recursive: true, force: true }));
  return path;
}

function heldBy(path: string, holder: Holder | null): string {
  if (holder === null) return `${path} is held by another hub that is just starting.`;
  const { pid, host, since, address } = holder;
  const where = address === null ? 'its door is not open yet' : `its screens are at ${address}`;
  return `${path} is held by another hub: process ${pid} on ${host}, since ${since}; ${where}.`;
}

function openLog(file: string): EventLog {
  try {
    return openSqliteLog(file);
  } catch (fault) {
    if (fault instanceof NotOurLog) throw new CannotStart(`${fault.message}.`);
    const { code = '' } = fault as { readonly code?: string };
    // Here it is known which file that is.
    const told = code.startsWith('SQLITE_CANTOPEN') ? null : unusableDisk(dirname(file), fault);
    throw told ?? new CannotStart(`${file} cannot be opened: ${(fault as Error).message}.`);
  }
}
