import { BlockList, isIP } from 'node:net';
import type { HostNames } from './names.ts';

/** A stretch of addresses: its first one, and how many bits of it they share. */
type Block = readonly [first: string, bits: number];

/** Private addresses of IPv4 (RFC 1918), of the link (RFC 3927) and of the machine (RFC 1122). */
const BLOCKS_4: readonly Block[] = [
  ['10.0.0.0', 8],
  ['172.16.0.0', 12],
  ['192.168.0.0', 16],
  ['169.254.0.0', 16],
  ['127.0.0.0', 8],
];

/** Unique local addresses of IPv6 (RFC 4193), of the link and of the machine (RFC 4291). */
const BLOCKS_6: readonly Block[] = [
  ['fc00::', 7],
  ['fe80::', 10],
  ['::1', 128],
];

const OWN_NAMES = ['localhost', 'local'];

/**
 * What a kitchen's authority may ever vouch for: addresses of private networks, names under
 * `.local`, and what this machine was called when the authority was made. Whoever got hold of its
 * key could still not pass for any place on the internet.
 */
export type Permitted = { readonly dns: readonly string[]; readonly ip: readonly Buffer[] };

export function permittedFor({ dns, addresses }: HostNames): Permitted {
  const names = dns.filter((name) => !isUnder(name, OWN_NAMES));
  const others = addresses.filter((address) => !isPrivate(address));
  return {
    dns: [...OWN_NAMES, ...names],
    ip: [...BLOCKS_4, ...BLOCKS_6, ...others.map(alone)].map(subtreeOf),
  };
}

/** Whether a name, or an address in figures, lies within what was permitted. */
export function isPermitted(name: string, { dns, ip }: Permitted): boolean {
  if (isIP(name) === 0) return isUnder(name, dns);
  const asked = bytesOf(name);
  return ip.some((subtree) => {
    const half = subtree.length / 2;
    if (half !== asked.length) return false;
    const [first, mask] = [subtree.subarray(0, half), subtree.subarray(half)];
    return asked.every((byte, n) => (byte & (mask[n] ?? 0)) === first[n]);
  });
}

/** As RFC 5280 §4.2.1.10 reads a constraint on names: it and whatever has labels before it. */
const isUnder = (name: string, constraints: readonly string[]) =>
  constraints.some((each) => name === each || name.endsWith(`.${each}`));

const alone = (address: string): Block => [address, isIP(address) === 4 ? 32 : 128];

function isPrivate(address: string): boolean {
  const list = new BlockList();
  for (const [first, bits] of BLOCKS_4) list.addSubnet(first, bits, 'ipv4');
  for (const [first, bits] of BLOCKS_6) list.addSubnet(first, bits, 'ipv6');
  return list.check(address, isIP(address) === 4 ? 'ipv4' : 'ipv6');
}

/** An address and its mask, one after the other (RFC 5280 §4.2.1.10). */
function subtreeOf([first, bits]: Block): Buffer {
  const address = bytesOf(first);
  const mask = address.map((_, n) => 0xff00 >> Math.min(8, Math.max(0, bits - 8 * n)));
  return Buffer.concat([address, Buffer.from(mask)]);
}

function bytesOf(address: string): Buffer {
  if (isIP(address) === 4) return Buffer.from(address.split('.').map(Number));
  // The parser of addresses in a URL spells every IPv6 one the same way, figures only.
  const whole = new URL(`http://[${address}]/`).hostname.slice(1, -1);
  const [head = '', tail] = whole.split('::');
  const words = (part: string) => (part === '' ? [] : part.split(':'));
  const [before, after] = [words(head), words(tail ?? '')];
  const gap = new Array<string>(8 - before.length - after.length).fill('0');
  const all = [...before, ...(tail === undefined ? [] : gap), ...after];
  return Buffer.from(all.flatMap((word) => [parseInt(word, 16) >> 8, parseInt(word, 16) & 0xff]));
}
