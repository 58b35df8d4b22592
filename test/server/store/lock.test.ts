import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { type Holder, lockFolder } from '../../../server/store/index.ts';

const somebody: Holder = { pid: 7, host: 'pit', since: '2026-11-25T07:00:00.000Z', address: null };

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'coalface-lock-'));
});
afterEach(() => {
  for (const child of children.splice(0)) child.kill('SIGKILL');
  rmSync(folder, { recursive: true });
});

const children: ChildProcess[] = [];

/** Another process that takes the folder and keeps it until it dies. */
async function holdElsewhere(): Promise<ChildProcess> {
  const code = `
    import { lockFolder } from './server/store/index.ts';
    import { setFlagsFromString } from 'node:v8';
    import { runInNewContext } from 'node:vm';
    const { ok } = lockFolder(${JSON.stringify(folder)}, ${JSON.stringify(somebody)});
    // Nobody here keeps what was returned: the lock must hold all the same.
    setFlagsFromString('--expose-gc');
    runInNewContext('gc')();
    console.log(ok);
    setInterval(() => {}, 1000);`;
  const args = ['--import', 'tsx', '--input-type=module', '--eval', code];
  const child = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'inherit'] });
  children.push(child);
  const [said] = await once(child.stdout, 'data');
  expect(String(said)).toBe('true\n');
  return child;
}

it('lets one process in and tells the next who it is', async () => {
  await holdElsewhere();
  expect(lockFolder(folder, { ...somebody, pid: 8 })).toEqual({ ok: false, holder: somebody });
});

it('is free as soon as its holder was killed', async () => {
  const child = await holdElsewhere();
  child.kill('SIGKILL');
  await once(child, 'exit');
  const mine = lockFolder(folder, { ...somebody, pid: 8 });
  expect(mine.ok).toBe(true);
  if (mine.ok) mine.release();
});

it('tells the address once the holder has said it', () => {
  const mine = lockFolder(folder, somebody);
  if (mine.ok) mine.say({ ...somebody, address: 'http://pit:4600/' });
  expect(lockFolder(folder, somebody)).toMatchObject({
    ok: false,
    holder: { address: 'http://pit:4600/' },
  });
  if (mine.ok) mine.release();
});

it('is free again after it was let go', () => {
  for (const _time of [1, 2]) {
    const mine = lockFolder(folder, somebody);
    expect(mine.ok).toBe(true);
    if (mine.ok) mine.release();
  }
});
