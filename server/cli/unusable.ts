const WHY: Readonly<Record<string, string>> = {
  ENOENT: 'its folder is not there',
  ENOTDIR: 'its folder is not there',
  EISDIR: 'it is a folder',
  EACCES: 'this user may not write there',
  EPERM: 'this user may not write there',
  EROFS: 'nothing can be written on that disk',
  ENOSPC: 'the disk is full',
};

/** Why a page is not on disk, for whoever named the place. */
export function notWritten(path: string, fault: unknown): string {
  const why = WHY[codeOf(fault)] ?? (fault as Error).message;
  return `${path} cannot be written: ${why}. Name another place with --out.`;
}

/** Why a file that was named cannot be read. @example 'log.csv: no such file.' */
export function notRead(path: string, fault: unknown): string {
  switch (codeOf(fault)) {
    case 'ENOENT':
    case 'ENOTDIR':
      return `${path}: no such file.`;
    case 'EISDIR':
      return `${path}: it is a folder; a file is wanted.`;
    case 'EACCES':
    case 'EPERM':
      return `${path}: this user may not read it.`;
    default:
      return `${path}: ${(fault as Error).message}.`;
  }
}

const codeOf = (fault: unknown): string => (fault as NodeJS.ErrnoException).code ?? '';
