import { spawnSync } from 'node:child_process';
import { chmodSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from '@playwright/test';
import { chromium } from '@playwright/test';
import { launchOptions } from '../browser.ts';

/** The hub's end of the cable, and the other's: a network of their own, as RFC 1918 has them. */
const HUB_ADDRESS = '10.211.97.1';
const OTHER_ADDRESS = '10.211.97.2';
const NAME = 'coalface-tablet';
const CABLE = ['cfhub0', 'cftab0'] as const;

export type SecondHost = {
  /** How the second host finds the first. */
  readonly hubAddress: string;
  /** A browser on the second host, which trusts these authorities beside its own. */
  browse(folder: string, authorities: readonly string[]): Promise<Browser>;
  remove(): void;
};

const run = (...words: string[]) => {
  const [command = '', ...args] = words;
  const { status, stderr } = spawnSync(command, args, { encoding: 'utf8' });
  return status === 0 ? null : (stderr ?? `${command} cannot be run`);
};

/**
 * A second host on a cable of its own: a network namespace of Linux. Instead of it a sentence,
 * where this machine cannot have one.
 */
export function openSecondHost(): SecondHost | string {
  if (process.platform !== 'linux' || process.getuid?.() !== 0) {
    return 'a second host is a network namespace, which only root on Linux may make';
  }
  const [here, there] = CABLE;
  const inside = ['ip', 'netns', 'exec', NAME];
  const steps = [
    ['ip', 'netns', 'add', NAME],
    ['ip', 'link', 'add', here, 'type', 'veth', 'peer', 'name', there, 'netns', NAME],
    ['ip', 'address', 'add', `${HUB_ADDRESS}/24`, 'dev', here],
    ['ip', 'link', 'set', here, 'up'],
    [...inside, 'ip', 'address', 'add', `${OTHER_ADDRESS}/24`, 'dev', there],
    [...inside, 'ip', 'link', 'set', there, 'up'],
    [...inside, 'ip', 'link', 'set', 'lo', 'up'],
  ];
  remove();
  for (const step of steps) {
    const fault = run(...step);
    if (fault === null) continue;
    remove();
    return `no second host could be made: ${step.join(' ')}: ${fault.trim()}`;
  }
  return { hubAddress: HUB_ADDRESS, browse, remove };
}

function remove(): void {
  run('ip', 'link', 'delete', CABLE[0]);
  run('ip', 'netns', 'delete', NAME);
}

/** As the owner of a device installs an authority, by a policy that this browser alone sees. */
function browse(folder: string, authorities: readonly string[]): Promise<Browser> {
  const { executablePath = 'chromium', args = [] } = launchOptions();
  const policy = join(folder, 'policy.json');
  const inDer = authorities.map((pem) => pem.replaceAll(/-----[^-]+-----|\s/g, ''));
  writeFileSync(policy, JSON.stringify({ CACertificates: inDer }));
  const launcher = join(folder, 'browse.sh');
  const managed = '/etc/chromium/policies/managed';
  writeFileSync(
    launcher,
    `#!/bin/sh
exec ip netns exec ${NAME} unshare --mount sh -c '
  mount -t tmpfs tmpfs /etc/chromium && mkdir -p ${managed} &&
  cp ${policy} ${managed}/trust.json && exec ${executablePath} "$@"' browser "$@"
`,
  );
  chmodSync(launcher, 0o755);
  return chromium.launch({ executablePath: launcher, args });
}
