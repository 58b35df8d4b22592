import { createPrivateKey, X509Certificate } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { CannotStart } from '../cannot-start.ts';
import type { Held } from './own.ts';

const DAY_MS = 86_400_000;
const SAID_BEFORE_MS = 14 * DAY_MS;

export type GivenFiles = { readonly cert: string; readonly key: string };

/** A certificate that somebody else signed, from its files: the chain with our own first. */
export function givenCertificate({ cert, key }: GivenFiles, nowMs: number): Held {
  const pair = { cert: read(cert), key: read(key) };
  const parsed = parse(cert, () => new X509Certificate(pair.cert));
  const isItsKey = parsed.checkPrivateKey(parse(key, () => createPrivateKey(pair.key)));
  if (!isItsKey) throw new CannotStart(`The key in ${key} is not that of ${cert}.`);
  const endMs = Date.parse(parsed.validTo);
  const isNear = endMs - nowMs < SAID_BEFORE_MS;
  const line = `The certificate in ${cert} ends on ${new Date(endMs).toISOString().slice(0, 10)}.`;
  return { pair, authority: null, lines: isNear ? [line] : [] };
}

/** The names for which a certificate vouches, as RFC 5280 §4.2.1.6 has them; no wildcards. */
export function namesIn(cert: string): string[] {
  const { subjectAltName = '' } = new X509Certificate(cert);
  const names = [...subjectAltName.matchAll(/DNS:([^,\s"]+)/g)].map(([, name = '']) => name);
  return names.filter((name) => !name.includes('*')).map((name) => name.toLowerCase());
}

function read(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch (fault) {
    throw new CannotStart(`${file} cannot be read: ${(fault as Error).message}.`);
  }
}

function parse<T>(file: string, run: () => T): T {
  try {
    return run();
  } catch {
    throw new CannotStart(`${file} is no PEM that can be read: a certificate, or its key.`);
  }
}
