import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chromium, type LaunchOptions } from 'playwright';

/** Where Debian's package puts it. */
const SYSTEM_CHROMIUM = '/usr/bin/chromium';

/** Keeps the browser to the pages we serve: no GPU, no look-ups or updates of its own. */
const QUIET = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

const isRoot = () => process.getuid?.() === 0;

const run = (command: string, ...args: string[]) =>
  spawnSync(command, args, { stdio: 'inherit', shell: process.platform === 'win32' }).status === 0;

/** The browser to use: the one named by `COALFACE_CHROMIUM`, the system's, or playwright's own. */
function findChromium(): string | undefined {
  const named = process.env['COALFACE_CHROMIUM'];
  if (named !== undefined) return named;
  return [SYSTEM_CHROMIUM, chromium.executablePath()].find(existsSync);
}

/** How every test and every picture script starts Chromium. */
export function launchOptions(): LaunchOptions {
  const executablePath = findChromium();
  return {
    // Chromium refuses to sandbox itself as root.
    args: isRoot() ? [...QUIET, '--no-sandbox'] : QUIET,
    ...(executablePath === undefined ? {} : { executablePath }),
  };
}

/** Brings a Chromium where there is none; false if this machine had no way to one. */
export function ensureBrowser(): boolean {
  if (findChromium() !== undefined) return true;
  console.log('Fetching a Chromium for the browser tests ...');
  const debian = existsSync('/usr/bin/apt-get') && isRoot();
  if (debian && run('apt-get', 'update')) {
    run('apt-get', 'install', '-y', '--no-install-recommends', 'chromium');
  }
  return findChromium() !== undefined || run('npx', 'playwright', 'install', 'chromium');
}
