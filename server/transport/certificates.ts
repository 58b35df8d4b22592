import { webcrypto } from 'node:crypto';
import { NAME_CONSTRAINTS, nameConstraints, readNameConstraints } from './name-constraints.ts';
import type { HostNames } from './names.ts';
import type { Permitted } from './permitted.ts';

/** A certificate and its private key, both as PEM. */
export type Pair = { readonly cert: string; readonly key: string };

const DAY_MS = 86_400_000;
/** As long as the tablets of a kitchen last: each has to install it by hand. */
const AUTHORITY_DAYS = 3650;
/**
 * Short enough that a key which leaked is soon worth nothing, and below the 825 days that some
 * devices let a certificate last whoever signed it (Apple, "Requirements for trusted certificates
 * in iOS 13 and macOS 10.15"; from memory).
 */
const HUB_DAYS = 90;
/** A tablet's clock may be behind: what is made now was good a day ago. */
const EARLIER_MS = DAY_MS;

/** `ub-common-name` of RFC 5280, appendix A.1. */
const LONGEST_NAME = 64;

const P256 = { name: 'ECDSA', namedCurve: 'P-256', hash: 'SHA-256' } as const;

/** Writing certificates is loaded only where one has to be written, once in some weeks. */
async function writer() {
  await import('reflect-metadata');
  const x509 = await import('@peculiar/x509');
  x509.cryptoProvider.set(webcrypto as Crypto);
  return x509;
}

const newKeys = () => webcrypto.subtle.generateKey(P256, true, ['sign', 'verify']);

/** What RFC 5280 §4.1.2.5 calls validity: in whole seconds. */
const validity = (nowMs: number, days: number) => ({
  notBefore: new Date(Math.floor((nowMs - EARLIER_MS) / 1000) * 1000),
  notAfter: new Date(Math.floor((nowMs + days * DAY_MS) / 1000) * 1000),
});

/**
 * Makes the authority of one kitchen: it signs certificates of the hub and nothing else (RFC 5280
 * §4.2.1.3, .9 and .10), for private networks alone.
 */
export async function makeAuthority(
  kitchen: string,
  permitted: Permitted,
  nowMs: number,
): Promise<Pair> {
  const x509 = await writer();
  const keys = await newKeys();
  const cert = await x509.X509CertificateGenerator.createSelfSigned({
    // A tablet lists it by this name among all that it trusts.
    name: [
      { CN: [`Coalface, ${kitchen}`.slice(0, LONGEST_NAME)] },
      { O: ['Coalface kitchen authority'] },
    ],
    keys: keys as CryptoKeyPair,
    signingAlgorithm: P256,
    ...validity(nowMs, AUTHORITY_DAYS),
    extensions: [
      new x509.BasicConstraintsExtension(true, 0, true),
      new x509.KeyUsagesExtension(
        x509.KeyUsageFlags.keyCertSign | x509.KeyUsageFlags.cRLSign,
        true,
      ),
      new x509.Extension(NAME_CONSTRAINTS, true, new Uint8Array(nameConstraints(permitted))),
      await x509.SubjectKeyIdentifierExtension.create(keys.publicKey as CryptoKey),
    ],
  });
  return { cert: cert.toString('pem'), key: await pemOf(keys.privateKey) };
}

/** What an authority that was made before may vouch for. */
export async function permittedBy(authority: string): Promise<Permitted> {
  const x509 = await writer();
  const found = new x509.X509Certificate(authority).getExtension(NAME_CONSTRAINTS);
  return found ? readNameConstraints(Buffer.from(found.value)) : { dns: [], ip: [] };
}

/** Has the authority sign a certificate of the hub for these names, with a key of its own. */
export async function signFor(names: HostNames, authority: Pair, nowMs: number): Promise<Pair> {
  const x509 = await writer();
  const signer = new x509.X509Certificate(authority.cert);
  const signingKey = await webcrypto.subtle.importKey(
    'pkcs8',
    x509.PemConverter.decodeFirst(authority.key),
    P256,
    false,
    ['sign'],
  );
  const keys = await newKeys();
  const { notBefore, notAfter } = validity(nowMs, HUB_DAYS);
  const cert = await x509.X509CertificateGenerator.create({
    subject: [{ CN: ['Coalface hub'] }],
    issuer: signer.subjectName.toJSON(),
    publicKey: keys.publicKey as CryptoKey,
    signingKey: signingKey as CryptoKey,
    signingAlgorithm: P256,
    notBefore,
    notAfter: new Date(Math.min(notAfter.getTime(), signer.notAfter.getTime())),
    extensions: [
      new x509.BasicConstraintsExtension(false, undefined, true),
      new x509.KeyUsagesExtension(x509.KeyUsageFlags.digitalSignature, true),
      new x509.ExtendedKeyUsageExtension([x509.ExtendedKeyUsage.serverAuth]),
      new x509.SubjectAlternativeNameExtension([
        ...names.dns.map((value) => ({ type: 'dns' as const, value })),
        ...names.addresses.map((value) => ({ type: 'ip' as const, value })),
      ]),
      await x509.SubjectKeyIdentifierExtension.create(keys.publicKey as CryptoKey),
      await x509.AuthorityKeyIdentifierExtension.create(signer.publicKey),
    ],
  });
  return { cert: cert.toString('pem'), key: await pemOf(keys.privateKey) };
}

async function pemOf(key: webcrypto.CryptoKey): Promise<string> {
  const x509 = await writer();
  return x509.PemConverter.encode(await webcrypto.subtle.exportKey('pkcs8', key), 'PRIVATE KEY');
}
