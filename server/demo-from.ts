import { existsSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { resolveLocal } from '../shared/kernel/index.ts';
import { CannotStart } from './cannot-start.ts';
import { faultLine, readFolder } from './folder/index.ts';
import { setKeptClock } from './kept-clock.ts';
import type { DemoFrom } from './options.ts';

/** Whether a hub has run there before. */
export const isUsed = (folder: string | null): boolean =>
  folder !== null && existsSync(join(resolve(folder), 'log.sqlite'));

/**
 * Sets the clock of a folder that is to be tried out. One that has a log keeps its time: what is
 * in a log never lies ahead of its clock.
 */
export function beginFrom(
  { day, time }: DemoFrom,
  { folder, wasUsed }: { readonly folder: string; readonly wasUsed: boolean },
): void {
  if (wasUsed) {
    throw new CannotStart(
      `--demo-from is for a folder in which no hub has run; ${folder} has a log.`,
      'Copy kitchen.json, catalogue.json and plans/ into another, or leave it out to go on.',
    );
  }
  const { kitchen, faults } = readFolder(folder);
  if (!kitchen) throw new CannotStart(...faults.map(faultLine));
  setKeptClock(folder, resolveLocal(day, time, kitchen.zone).at);
}
