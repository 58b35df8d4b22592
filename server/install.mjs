import { spawnSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fingerprint, readStamp, root } from './fingerprint.mjs';

// This file runs before anything is installed, so it may import nothing but Node itself.

const STAMP = 'node_modules/.coalface-installed';
/** As `engines` in package.json: the oldest Node that vite runs on. */
const OLDEST_NODE = { major: 20, minor: 19 };

/** SQLite is built for one kind of Node, so another Node needs its packages anew. */
const wanted = () => {
  const { platform, arch, versions } = process;
  return fingerprint(['package-lock.json'], `${platform} ${arch} ${versions.modules}`);
};

/** @param {string} sentence what a person can do about it @returns {never} */
export function giveUp(sentence) {
  console.error(sentence);
  process.exit(1);
}

/** Ends the program with one plain sentence when this Node is too old to run it. */
export function checkNode() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  const { major: oldest, minor: least } = OLDEST_NODE;
  if (major > oldest || (major === oldest && minor >= least)) return;
  giveUp(`Coalface needs Node ${oldest}.${least} or newer; this is ${process.version}.`);
}

/** Notes that what is installed now is what this lockfile and this Node want. */
export function markInstalled() {
  writeFileSync(join(root, STAMP), wanted());
}

/** Brings the packages the lockfile names, unless they are already here. */
export function ensureInstalled() {
  if (readStamp(STAMP) === wanted()) return;
  console.log('Installing packages (a minute or two where SQLite has to be compiled) ...');
  const { status } = spawnSync('npm', ['ci', '--include=dev', '--no-audit', '--no-fund'], {
    cwd: root,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  if (status !== 0) {
    giveUp('The packages could not be installed; the lines above say why. Try again with: npm ci');
  }
  if (readStamp(STAMP) !== wanted()) {
    giveUp(
      'npm left its install scripts out. Allow them with: npm config set ignore-scripts false',
    );
  }
}
