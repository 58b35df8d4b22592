import { createPrivateKey, createPublicKey, sign } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { isSignedBy } from '../../server/record/signing.ts';

/**
 * RFC 8032, Edwards-Curve Digital Signature Algorithm, section 7.1, test 1 (an empty message). The
 * vector is from memory: the text was not looked up; the platform's own signing agrees with it.
 */
const secret = '9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60';
const published = 'd75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a';
const signature =
  'e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e06522490155' +
  '5fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b';

/** RFC 8410: the fixed bytes before a raw Ed25519 key. */
const pkcs8 = Buffer.from(`302e020100300506032b657004220420${secret}`, 'hex');
const spki = Buffer.from(`302a300506032b6570032100${published}`, 'hex');

describe('RFC 8032, 7.1, test 1', () => {
  const base64 = (hex: string) => Buffer.from(hex, 'hex').toString('base64');

  it('has the key and the signature that the platform makes', () => {
    const key = createPrivateKey({ key: pkcs8, format: 'der', type: 'pkcs8' });
    const made = createPublicKey(key).export({ type: 'spki', format: 'der' });
    expect(made.toString('hex')).toBe(spki.toString('hex'));
    expect(sign(null, Buffer.alloc(0), key).toString('hex')).toBe(signature);
  });

  it('holds for its own message, and for no other', () => {
    expect(isSignedBy(spki.toString('base64'), '', base64(signature))).toBe(true);
    expect(isSignedBy(spki.toString('base64'), 'x', base64(signature))).toBe(false);
  });

  it('is no signature with another key, or with none', () => {
    expect(isSignedBy('', '', base64(signature))).toBe(false);
    expect(isSignedBy(spki.toString('base64'), '', '')).toBe(false);
  });
});
