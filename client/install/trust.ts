import type { InstallFacts } from '../../shared/protocol/index.ts';

/** How this page was reached. */
export type Trust =
  /** Over the network in the open: the certificate has yet to be installed. */
  | 'open'
  /** Over TLS, which the browser took for good. */
  | 'trusted'
  /** From the hub's own machine. */
  | 'here';

export function trustOf({ protocol, hostname }: Pick<Location, 'protocol' | 'hostname'>): Trust {
  if (protocol === 'https:') return 'trusted';
  return ['localhost', '127.0.0.1', '[::1]'].includes(hostname) ? 'here' : 'open';
}

/** What the hub says that a device has to know; null while it does not answer. */
export async function installFacts(ask: typeof fetch = fetch): Promise<InstallFacts | null> {
  try {
    return (await (await ask('/install.json')).json()) as InstallFacts;
  } catch {
    return null;
  }
}

/**
 * Whether this device trusts the hub by now: a page in the open may not read what it is answered
 * over TLS, but sees that there was an answer.
 */
export async function isTrusted(host: string, ask: typeof fetch = fetch): Promise<boolean> {
  try {
    await ask(`https://${host}/install.json`, { mode: 'no-cors', cache: 'no-store' });
    return true;
  } catch {
    return false;
  }
}

/** A place on the same hub over TLS; one on another host leads to the list of screens. */
export function overTls(host: string, to: string): string {
  const base = `https://${host}`;
  const asked = URL.canParse(to, base) ? new URL(to, base) : null;
  return asked?.origin === new URL(base).origin ? asked.href : `${base}/`;
}
