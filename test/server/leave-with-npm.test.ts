import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { describe, expect, it } from 'vitest';
import { root } from '../../server/fingerprint.mjs';

/** Stands for the hub: says that it is up, and how it was asked to leave. */
const HUB = `
  const { leaveWithNpm } = await import(${JSON.stringify(join(root, 'server/leave-with-npm.mjs'))});
  leaveWithNpm();
  process.on('SIGTERM', () => { console.log('asked to leave'); process.exit(0); });
  setInterval(() => {}, 1000);
  console.log('up');`;

/** Runs a hub and answers what it said until its end, when it got a signal once it was up. */
async function heard(command: readonly [string, ...string[]], onceUp: NodeJS.Signals) {
  const folder = mkdtempSync(join(tmpdir(), 'coalface-npm-'));
  writeFileSync(join(folder, 'hub.mjs'), HUB);
  const scripts = { start: 'node hub.mjs' };
  writeFileSync(join(folder, 'package.json'), JSON.stringify({ scripts }));

  const [file, ...args] = command;
  const started = spawn(file, args, { cwd: folder });
  const lines = createInterface(started.stdout);
  const said: string[] = [];
  lines.on('line', (line) => {
    said.push(line);
    if (line === 'up') started.kill(onceUp);
  });
  await once(lines, 'close');
  rmSync(folder, { recursive: true });
  return said;
}

/** Elsewhere nothing tells one process whether another still lives. */
const SIGNALS: NodeJS.Signals[] = process.platform === 'linux' ? ['SIGTERM', 'SIGKILL'] : [];

describe('a hub', () => {
  it.each(SIGNALS)('that npm started leaves when npm gets %s', async (signal) => {
    expect(await heard(['npm', 'start', '--silent'], signal)).toEqual(['up', 'asked to leave']);
  });

  it('that was started by hand leaves when it is asked itself', async () => {
    expect(await heard(['node', 'hub.mjs'], 'SIGTERM')).toEqual(['up', 'asked to leave']);
  });
});
