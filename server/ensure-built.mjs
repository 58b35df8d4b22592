import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fingerprint, readStamp, root } from './fingerprint.mjs';
import { giveUp } from './install.mjs';

const STAMP = 'dist/.coalface-built';
const SOURCES = ['client', 'shared', 'vite.config.ts', 'tsconfig.json', 'package-lock.json'];

/** Builds the screens into `dist/`, unless what is there was built from these very sources. */
export function ensureBuilt() {
  const wanted = fingerprint(SOURCES);
  if (readStamp(STAMP) === wanted) return;
  console.log('Building the screens ...');
  // A process of its own: the hub shall not carry a bundler's memory through the night.
  const vite = join(root, 'node_modules/vite/bin/vite.js');
  const { status } = spawnSync(process.execPath, [vite, 'build', '--logLevel', 'warn'], {
    cwd: root,
    stdio: 'inherit',
    // Whoever has it built, a test or a developer's shell: walls get the same files.
    env: { ...process.env, NODE_ENV: 'production' },
  });
  if (status !== 0) giveUp('The screens could not be built; the lines above say why.');
  writeFileSync(join(root, STAMP), wanted);
}
