import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { HELP } from '../../server/command-line.mjs';
import { fingerprint, root } from '../../server/fingerprint.mjs';

/** Asks the check of the launcher, on a Node that gives itself out as another one. */
function checkedOn(version: string) {
  const script = `
    Object.defineProperty(process.versions, 'node', { value: '${version}' });
    const { checkNode } = await import('./server/install.mjs');
    checkNode();
    console.log('goes on');`;
  return spawnSync(process.execPath, ['--input-type=module', '-e', script], {
    cwd: root,
    encoding: 'utf8',
  });
}

/** What the launcher says where nothing was installed yet. */
function launchedBare(...args: string[]) {
  const folder = mkdtempSync(join(tmpdir(), 'coalface-bare-'));
  for (const file of readdirSync(join(root, 'server')).filter((name) => name.endsWith('.mjs'))) {
    cpSync(join(root, 'server', file), join(folder, 'server', file));
  }
  const launch = [join(folder, 'server/launch.mjs'), ...args];
  const ended = spawnSync(process.execPath, launch, { encoding: 'utf8' });
  const made = readdirSync(folder);
  rmSync(folder, { recursive: true });
  return { ...ended, made };
}

describe('the command line of a clone in which nothing was installed', () => {
  it('is explained at once when help is asked for', () => {
    const { status, stdout, stderr, made } = launchedBare('--help');
    expect([status, stderr]).toEqual([0, '']);
    expect(stdout).toBe(HELP);
    expect(made).toEqual(['server']);
  });

  it('is put right before anybody waits for an install', () => {
    const { status, stdout, stderr, made } = launchedBare('--bad-option');
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toBe('There is no option --bad-option\nAll options: npm start -- --help\n');
    expect(made).toEqual(['server']);
  });
});

describe('the launcher', () => {
  it('says in one sentence that a Node is too old', () => {
    const { status, stderr } = checkedOn('18.20.4');
    expect(status).toBe(1);
    expect(stderr).toMatch(/^Coalface needs Node 20\.19 or newer; this is v[\d.]+\.\n$/);
    expect(checkedOn('20.18.3').status).toBe(1);
  });

  it('goes on with the oldest Node that is enough, and with newer ones', () => {
    expect(checkedOn('20.19.0').stdout).toBe('goes on\n');
    expect(checkedOn('22.0.0').stdout).toBe('goes on\n');
  });

  it('knows the same content again, and other content for another', () => {
    const files = ['package.json', 'server'];
    expect(fingerprint(files)).toBe(fingerprint(files));
    expect(fingerprint(files)).not.toBe(fingerprint(['package.json']));
    expect(fingerprint(files)).not.toBe(fingerprint(files, 'another Node'));
    expect(fingerprint([join('no', 'such', 'file')])).toBe(fingerprint([]));
  });
});
