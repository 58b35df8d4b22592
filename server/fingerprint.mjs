import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder of the project, wherever it was started from. */
export const root = dirname(dirname(fileURLToPath(import.meta.url)));

/** @param {string} path @returns {string[]} the files at and below a path, in a settled order */
function filesAt(path) {
  if (!existsSync(path)) return [];
  if (statSync(path).isFile()) return [path];
  return readdirSync(path)
    .sort()
    .flatMap((name) => filesAt(join(path, name)));
}

/**
 * One short name for the content of some files and folders of the project. Times are left out on
 * purpose: a fresh clone and a branch switched twice have new times and the same content.
 *
 * @param {string[]} paths from the project's folder
 * @param {string} [also] anything else that must be the same
 */
export function fingerprint(paths, also = '') {
  const hash = createHash('sha256').update(also);
  for (const file of paths.flatMap((path) => filesAt(join(root, path)))) {
    hash.update(`\0${relative(root, file)}\0`).update(readFileSync(file));
  }
  return hash.digest('hex');
}

/**
 * @param {string} stamp a file, from the project's folder
 * @returns {string} what was written there last
 */
export function readStamp(stamp) {
  const path = resolve(root, stamp);
  return existsSync(path) ? readFileSync(path, 'utf8') : '';
}
