import {
  createHash,
  createPrivateKey,
  createPublicKey,
  generateKeyPairSync,
  type KeyObject,
  sign,
  verify,
} from 'node:crypto';
import { chmodSync, existsSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** The hand of a hub: Ed25519 (RFC 8032). Keys and signatures in base64. */
export type Signer = {
  /** SubjectPublicKeyInfo (RFC 8410). */
  readonly publicKey: string;
  sign(text: string): string;
};

const FILE = 'sign.key';
const OWNER_ALONE = 0o600;
const OTHERS = 0o077;

/**
 * The key of a folder, made where there is none. Who can read it can sign in the hub's name, so
 * that nobody but the hub's own user may.
 */
export function openSigner(folder: string): Signer {
  const file = join(folder, FILE);
  if (!existsSync(file)) writeFileSync(file, newKey(), { mode: OWNER_ALONE, flag: 'wx' });
  if ((statSync(file).mode & OTHERS) !== 0) chmodSync(file, OWNER_ALONE);
  return signerWith(createPrivateKey(readFileSync(file, 'utf8')));
}

/** The key of a folder, or null where there is none: nothing is written. */
export function signerIn(folder: string): Signer | null {
  const file = join(folder, FILE);
  return existsSync(file) ? signerWith(createPrivateKey(readFileSync(file, 'utf8'))) : null;
}

/** A hand that nobody knows, for what is thrown away. */
export const passingSigner = (): Signer => signerWith(generateKeyPairSync('ed25519').privateKey);

const newKey = () =>
  generateKeyPairSync('ed25519').privateKey.export({ type: 'pkcs8', format: 'pem' });

function signerWith(key: KeyObject): Signer {
  const spki = createPublicKey(key).export({ type: 'spki', format: 'der' });
  return {
    publicKey: spki.toString('base64'),
    sign: (text) => sign(null, Buffer.from(text, 'utf8'), key).toString('base64'),
  };
}

/** Whether that key signed that text; false also where either is no such thing. */
export function isSignedBy(publicKey: string, text: string, signature: string): boolean {
  try {
    const der = Buffer.from(publicKey, 'base64');
    const key = createPublicKey({ key: der, format: 'der', type: 'spki' });
    if (key.asymmetricKeyType !== 'ed25519') return false;
    return verify(null, Buffer.from(text, 'utf8'), key, Buffer.from(signature, 'base64'));
  } catch {
    return false;
  }
}

/** SHA-256 (FIPS 180-4) of a text in UTF-8, in hexadecimal. */
export const digestOf = (text: string): string =>
  createHash('sha256').update(text, 'utf8').digest('hex');

/** A key as a person compares it: the beginning of its SHA-256, in fours. */
export function fingerprintOf(publicKey: string): string {
  const hex = createHash('sha256').update(Buffer.from(publicKey, 'base64')).digest('hex');
  return (hex.slice(0, 24).match(/.{4}/g) ?? []).join(' ');
}
