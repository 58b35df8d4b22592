import { spawnSync } from 'node:child_process';
import { createHash, X509Certificate } from 'node:crypto';
import { once } from 'node:events';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { connect, createServer, type Server } from 'node:tls';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makeAuthority, type Pair, signFor } from '../../server/transport/certificates.ts';
import { permittedFor } from '../../server/transport/permitted.ts';

/**
 * Source: RFC 5280, "Internet X.509 Public Key Infrastructure Certificate and CRL Profile", §4.1.2
 * (validity), §4.2.1 (extensions) and §6 (validation); RFC 8446 for the handshake. What judges is
 * OpenSSL, once by its own program and once inside Node, neither of which wrote the certificates.
 */

const now = Date.now();
const DAY_MS = 86_400_000;
const names = { dns: ['localhost', 'pit', 'pit.local'], addresses: ['127.0.0.1', '192.168.1.5'] };

let folder: string;
let authority: Pair;
let hub: Pair;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'coalface-x509-'));
  authority = await makeAuthority('Río & Smoke', permittedFor(names), now);
  hub = await signFor(names, authority, now);
  writeFileSync(join(folder, 'authority.pem'), authority.cert);
  writeFileSync(join(folder, 'hub.pem'), hub.cert);
});
afterAll(() => rmSync(folder, { recursive: true }));

const openssl = (...args: string[]) => {
  const { stdout, stderr, error } = spawnSync('openssl', args, { cwd: folder, encoding: 'utf8' });
  if (error) throw new Error(`openssl is needed for this: ${error.message}`);
  return `${stdout}${stderr}`;
};

/** An extension as OpenSSL prints it, in one line. */
const extension = (file: string, name: string) =>
  openssl('x509', '-in', file, '-noout', '-ext', name).replaceAll(/\s+/g, ' ').trim();

async function shakeHands(pair: Pair, options: { ca?: string; servername?: string }) {
  const server: Server = createServer(pair, (socket) => socket.end());
  server.on('tlsClientError', () => {});
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as AddressInfo;
  try {
    const socket = connect({ host: '127.0.0.1', port, ...options });
    await once(socket, 'secureConnect');
    socket.destroy();
    return 'trusted';
  } catch (fault) {
    const { code, message } = fault as NodeJS.ErrnoException;
    return code === 'UNSPECIFIED' ? message : code;
  } finally {
    server.close();
  }
}

describe('the certificate of the hub', () => {
  it('is valid under its authority by the strict rules of RFC 5280 §6', () => {
    expect(openssl('verify', '-x509_strict', '-CAfile', 'authority.pem', 'hub.pem')).toBe(
      'hub.pem: OK\n',
    );
  });

  it('names the host in subjectAltName, every name and address of it (§4.2.1.6)', () => {
    expect(extension('hub.pem', 'subjectAltName')).toBe(
      'X509v3 Subject Alternative Name: DNS:localhost, DNS:pit, DNS:pit.local, ' +
        'IP Address:127.0.0.1, IP Address:192.168.1.5',
    );
  });

  it('may sign handshakes of a server and no certificate (§4.2.1.3, .9, .12)', () => {
    expect(extension('hub.pem', 'basicConstraints')).toContain('critical CA:FALSE');
    expect(extension('hub.pem', 'keyUsage')).toMatch(/critical Digital Signature$/);
    expect(extension('hub.pem', 'extendedKeyUsage')).toMatch(/: TLS Web Server Authentication$/);
  });

  it('names the key that signed it (§4.2.1.1, §4.2.1.2)', () => {
    const [signer] = extension('authority.pem', 'subjectKeyIdentifier').match(/[\dA-F:]{59}/) ?? [];
    expect(extension('hub.pem', 'authorityKeyIdentifier')).toContain(signer);
  });

  it('has a positive serial number of at most 20 octets (§4.1.2.2)', () => {
    for (const { cert } of [hub, authority]) {
      const serial = new X509Certificate(cert).serialNumber;
      expect(serial.length).toBeLessThanOrEqual(40);
      expect(openssl('x509', '-in', 'hub.pem', '-noout', '-serial')).not.toContain('-');
      expect(BigInt(`0x${serial}`)).toBeGreaterThan(0n);
    }
  });

  it('is taken by a stranger who has the authority, and by nobody who has not', async () => {
    expect(await shakeHands(hub, { ca: authority.cert })).toBe('trusted');
    expect(await shakeHands(hub, { ca: authority.cert, servername: 'pit.local' })).toBe('trusted');
    expect(await shakeHands(hub, {})).toBe('UNABLE_TO_VERIFY_LEAF_SIGNATURE');
  });

  it('is not taken under a name that it does not have', async () => {
    const asked = { ca: authority.cert, servername: 'desk.local' };
    expect(await shakeHands(hub, asked)).toBe('ERR_TLS_CERT_ALTNAME_INVALID');
  });

  it('is not taken once it has ended (§4.1.2.5)', async () => {
    const old = await signFor(names, authority, now - 91 * DAY_MS);
    expect(await shakeHands(old, { ca: authority.cert })).toBe('CERT_HAS_EXPIRED');
  });
});

describe('the authority of a kitchen', () => {
  it('may sign certificates, and none of them another (§4.2.1.3, §4.2.1.9)', () => {
    expect(extension('authority.pem', 'basicConstraints')).toMatch(/critical CA:TRUE, pathlen:0$/);
    expect(extension('authority.pem', 'keyUsage')).toMatch(/critical Certificate Sign, CRL Sign$/);
  });

  it('vouches for private networks and this machine alone, critically so (§4.2.1.10)', () => {
    const constraints = extension('authority.pem', 'nameConstraints');
    expect(constraints).toContain('critical Permitted:');
    for (const each of ['DNS:local ', 'DNS:pit ', 'IP:10.0.0.0/255.0.0.0', 'IP:FC00:0']) {
      expect(constraints).toContain(each);
    }
    expect(constraints).not.toContain('Excluded');
  });

  it.each([
    ['a name of the internet', { dns: ['bank.example'], addresses: [] }],
    ['an address of the internet', { dns: [], addresses: ['203.0.113.9'] }],
  ])('is believed by nobody when it vouches for %s', async (_what, asked) => {
    // As if somebody had got hold of its key: what keeps such names out of ours is passed by.
    const forged = await signFor(asked, authority, now);
    const answer = await shakeHands(forged, { ca: authority.cert });
    expect(answer).toBe('permitted subtree violation');
  });

  it('shows the fingerprint that every device reckons: SHA-256 over its bytes in DER', () => {
    const { raw, fingerprint256 } = new X509Certificate(authority.cert);
    const own = createHash('sha256').update(raw).digest('hex').toUpperCase();
    expect(fingerprint256.replaceAll(':', '')).toBe(own);
    const theirs = openssl('x509', '-in', 'authority.pem', '-noout', '-fingerprint', '-sha256');
    expect(theirs.trim()).toContain(fingerprint256);
  });
});
