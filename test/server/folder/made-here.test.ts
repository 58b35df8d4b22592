import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { madeHere } from '../../../server/folder/made-here.ts';

let folder: string;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'coalface-made-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const put = (...names: string[]) => {
  for (const name of names) writeFileSync(join(folder, name), '');
};

it('takes out what a start made that came to nothing, and leaves what is not of a hub', () => {
  put('plan.json', 'folder.lock');
  const made = madeHere(folder);
  put('log.sqlite', 'log.sqlite-wal', 'log.sqlite-shm', 'sign.key', 'holder.json', 'notes.txt');
  made.takeOut();
  expect(readdirSync(folder).sort()).toEqual(['folder.lock', 'notes.txt', 'plan.json']);
});

it('leaves what was there before whole, also what has not come into the old log yet', () => {
  put('log.sqlite', 'sign.key');
  const made = madeHere(folder);
  put('log.sqlite-wal', 'log.sqlite-shm', 'record.sqlite');
  made.takeOut();
  expect(readdirSync(folder).sort()).toEqual([
    'log.sqlite',
    'log.sqlite-shm',
    'log.sqlite-wal',
    'sign.key',
  ]);
});

it('leaves a new key where days lay that it may have signed', () => {
  put('log.sqlite', 'record.sqlite');
  const made = madeHere(folder);
  put('sign.key');
  made.takeOut();
  expect(readdirSync(folder).sort()).toEqual(['log.sqlite', 'record.sqlite', 'sign.key']);
});
