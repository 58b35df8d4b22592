import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
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
