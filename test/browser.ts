import { existsSync } from 'node:fs';
import type { LaunchOptions } from 'playwright';

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

/**
 * How every test and picture script starts Chromium: the one named by `COALFACE_CHROMIUM`, else
 * the system's, else the one playwright fetched for itself.
 */
export function launchOptions(): LaunchOptions {
  const named = process.env['COALFACE_CHROMIUM'];
  const executablePath = named ?? (existsSync(SYSTEM_CHROMIUM) ? SYSTEM_CHROMIUM : undefined);
  // Chromium refuses to sandbox itself as root.
  const sandbox = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  return {
    args: [...QUIET, ...sandbox],
    ...(executablePath === undefined ? {} : { executablePath }),
  };
}
