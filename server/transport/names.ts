import { isIP } from 'node:net';
import { hostname, networkInterfaces } from 'node:os';

/** What a certificate answers for. */
export type HostNames = {
  readonly dns: readonly string[];
  /** In figures, IPv4 and IPv6, as Node spells them. */
  readonly addresses: readonly string[];
};

/** A name as RFC 1123 §2.1 lets a host have it; others could not stand in a certificate. */
const HOST_NAME =
  /^(?=.{1,253}$)[a-z0-9]([a-z0-9-]{0,61}[a-z0-9])?(\.[a-z0-9]([a-z0-9-]*[a-z0-9])?)*$/;

/** The names this machine goes by: its own, and the one that multicast DNS gives it (RFC 6762). */
export function namesHere(): string[] {
  const name = hostname().toLowerCase();
  return HOST_NAME.test(name) ? [name, `${name.replace(/\.local$/, '')}.local`] : [];
}

/**
 * Everything that another device, or this one, can ask for us by, in a settled order.
 * @param host the address we listen on; 0.0.0.0 is every one of IPv4.
 */
export function hostNames(host: string, also: readonly string[]): HostNames {
  const isFigures = (each: string) => isIP(each) !== 0;
  const dns = new Set(['localhost', ...namesHere(), ...also.filter((each) => !isFigures(each))]);
  const here = host === '0.0.0.0' ? outsideAddresses() : [host];
  const addresses = new Set(['127.0.0.1', '::1', ...here, ...also.filter(isFigures)]);
  return { dns: [...dns].sort(), addresses: [...addresses].sort() };
}

/** The addresses of IPv4 by which others on the network reach this machine. */
export function outsideAddresses(): string[] {
  return Object.values(networkInterfaces())
    .flatMap((each) => each ?? [])
    .filter(({ family, internal }) => family === 'IPv4' && !internal)
    .map(({ address }) => address);
}
