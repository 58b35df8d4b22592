import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { BUILT_HUB, BUILT_SCREENS } from './built.mjs';
import { fingerprint, readStamp, root } from './fingerprint.mjs';
import { giveUp } from './install.mjs';

/** @typedef {{ name: string, folder: string, config: string, sources: string[] }} Part */

const SHARED = ['shared', 'tsconfig.json', 'package-lock.json'];
/** @type {Part} */
const SCREENS = {
  name: 'screens',
  folder: BUILT_SCREENS,
  config: 'vite.config.ts',
  sources: ['client', 'vite.config.ts', ...SHARED],
};
/** @type {Part} */
const HUB = {
  name: 'hub',
  folder: BUILT_HUB,
  config: 'server/vite.config.ts',
  sources: ['server', ...SHARED],
};

/** Builds screens and hub into `dist/`, unless what is there was built from these very sources. */
export function ensureBuilt() {
  ensurePart(SCREENS);
  ensureHubBuilt();
}

/** The same of the hub alone: its process, its command line and its threads run what was built. */
export function ensureHubBuilt() {
  ensurePart(HUB);
}

/** @param {Part} part */
function ensurePart({ name, folder, config, sources }) {
  const stamp = join(folder, '.coalface-built');
  const wanted = fingerprint(sources);
  if (readStamp(stamp) === wanted) return;
  // Not among what the command line answers, which may be piped on.
  console.error(`Building the ${name} ...`);
  // A process of its own: the hub shall not carry a bundler's memory through the night.
  const vite = join(root, 'node_modules/vite/bin/vite.js');
  const build = [vite, 'build', '--logLevel', 'warn', '--config', config];
  const { status } = spawnSync(process.execPath, build, {
    cwd: root,
    stdio: ['ignore', 2, 2],
    // Whoever has it built, a test or a developer's shell: walls get the same files.
    env: { ...process.env, NODE_ENV: 'production' },
  });
  if (status !== 0) giveUp(`The ${name} could not be built; the lines above say why.`);
  writeFileSync(stamp, wanted);
}
