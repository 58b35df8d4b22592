import { CannotStart } from './cannot-start.ts';

const WHY: Readonly<Record<string, string>> = {
  ENOSPC: 'the disk is full: make room on it',
  EDQUOT: 'this user may keep no more on its disk: make room there',
  SQLITE_FULL: 'the disk is full: make room on it',
  EROFS: 'nothing can be written on its disk: name a folder on another',
  SQLITE_READONLY: 'it may not be written to: let this user write there',
  EACCES: 'it may not be written to: let this user write there',
  EPERM: 'it may not be written to: let this user write there',
  SQLITE_CANTOPEN: 'a file in it cannot be opened: let this user read and write there',
  EIO: 'its disk fails: name a folder on another',
  SQLITE_IOERR: 'its disk is full or fails: make room on it, or name a folder on another',
};

/** A fault of the disk under a start, in words; null where it is another. */
export function unusableDisk(folder: string, fault: unknown): CannotStart | null {
  const { code = '' } = fault as { readonly code?: string };
  const [, bare = code] = /^(SQLITE_[A-Z]+)/.exec(code) ?? [];
  const why = WHY[bare];
  return why === undefined ? null : new CannotStart(`${folder}: ${why}, and start again.`);
}
