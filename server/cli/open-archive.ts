import { statSync } from 'node:fs';
import { resolve } from 'node:path';
import { type ReadArchive, readArchive } from '../record/index.ts';
import type { Asked } from './command.ts';
import { notThere } from './kitchen-files.ts';
import { hasLog } from './read-log.ts';
import { cannot, type Refused } from './refusal.ts';

/** The record of a folder, or why it cannot be read. */
export async function openArchive(
  path: string,
  folder: string,
): Promise<{ readonly ok: true; readonly read: ReadArchive } | Refused> {
  const place = resolve(folder, path);
  if (!statSync(place, { throwIfNoEntry: false })?.isDirectory()) return notThere(path, 'folder');
  if (!hasLog(place)) {
    return cannot([{ rule: 'no-log', sentence: `${path}: there is no log yet.`, path }]);
  }
  try {
    return { ok: true, read: await readArchive(place) };
  } catch (fault) {
    const sentence = `${path}: its record cannot be read: ${(fault as Error).message}.`;
    return cannot([{ rule: 'unreadable-record', sentence, path }]);
  }
}

/** The days that were asked for; a day goes before a stretch, and all there is goes for nothing. */
export function daysAsked({ options }: Asked, days: readonly string[]): readonly [string, string] {
  const day = options.get('day');
  const from = day ?? options.get('from') ?? days[0] ?? '';
  return [from, day ?? options.get('to') ?? days.at(-1) ?? from];
}
