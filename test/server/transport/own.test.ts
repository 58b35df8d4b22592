import { X509Certificate } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { CannotStart } from '../../../server/cannot-start.ts';
import { ownCertificate } from '../../../server/transport/own.ts';

const DAY_MS = 86_400_000;
const now = Date.now();
const names = { dns: ['localhost', 'pit'], addresses: ['127.0.0.1', '192.168.1.5'] };

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'coalface-own-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

const certificate = (also: { names?: typeof names; nowMs?: number } = {}) =>
  ownCertificate({ folder, kitchen: 'Smoke', names, nowMs: now, ...also });

it('makes keys once: the next start finds them as they were', async () => {
  const first = await certificate();
  expect(await certificate({ nowMs: now + 30 * DAY_MS })).toEqual(first);
  expect(first.lines).toEqual([]);
});

it('keeps keys where their owner alone can read them', async () => {
  await certificate();
  const at = join(folder, 'tls');
  expect(statSync(at).mode & 0o777).toBe(0o700);
  const files = readdirSync(at);
  expect(files.filter((file) => file.endsWith('-key.pem'))).toHaveLength(2);
  for (const file of files) expect(statSync(join(at, file)).mode & 0o777).toBe(0o600);
});

it('signs the hub anew a month before the certificate ends, under the same authority', async () => {
  const first = await certificate();
  const later = await certificate({ nowMs: now + 61 * DAY_MS });
  expect(later.pair.cert).not.toBe(first.pair.cert);
  expect(later.authority).toEqual(first.authority);
  const { validTo } = new X509Certificate(later.pair.cert);
  expect(Date.parse(validTo)).toBeGreaterThan(now + 150 * DAY_MS);
});

it('signs the hub anew when the network gives the machine another address', async () => {
  const first = await certificate();
  const moved = await certificate({ names: { ...names, addresses: ['127.0.0.1', '10.0.0.9'] } });
  expect(moved.authority).toEqual(first.authority);
  const parsed = new X509Certificate(moved.pair.cert);
  expect(parsed.checkIP('10.0.0.9')).toBe('10.0.0.9');
  expect(parsed.checkIP('192.168.1.5')).toBeUndefined();
});

it('leaves out, and says, what an older authority cannot vouch for', async () => {
  await certificate();
  const asked = { dns: [...names.dns, 'kitchen.example'], addresses: ['127.0.0.1', '203.0.113.9'] };
  const { pair, lines } = await certificate({ names: asked });
  expect(lines).toEqual([
    expect.stringContaining('kitchen.example'),
    expect.stringContaining('203.0.113.9'),
  ]);
  expect(new X509Certificate(pair.cert).subjectAltName).toBe(
    'DNS:localhost, DNS:pit, IP Address:127.0.0.1',
  );
});

it('vouches for a name or address of the internet that it had from the start', async () => {
  const asked = { dns: ['kitchen.example'], addresses: ['203.0.113.9', '2001:db8::7'] };
  const { pair, lines } = await certificate({ names: asked });
  expect(lines).toEqual([]);
  const parsed = new X509Certificate(pair.cert);
  expect(parsed.checkIP('203.0.113.9')).toBe('203.0.113.9');
  expect(parsed.checkIP('2001:db8::7')).toBe('2001:db8::7');
  expect(parsed.checkHost('kitchen.example')).toBe('kitchen.example');
});

it('makes another authority when the first nears its end, and says what that means', async () => {
  const first = await certificate();
  const { authority, lines } = await certificate({ nowMs: now + 3630 * DAY_MS });
  expect(authority?.fingerprint).not.toBe(first.authority?.fingerprint);
  expect(lines).toEqual([expect.stringContaining('install it again')]);
});

it('does not replace an authority that is damaged behind its owner’s back', async () => {
  await certificate();
  writeFileSync(join(folder, 'tls/authority-key.pem'), 'gone');
  const again = certificate();
  await expect(again).rejects.toBeInstanceOf(CannotStart);
  await expect(again).rejects.toThrow('every tablet');
});

it('signs the hub anew when only that is damaged', async () => {
  const { authority } = await certificate();
  writeFileSync(join(folder, 'tls/hub.pem'), 'gone');
  const mended = await certificate();
  expect(mended.authority).toEqual(authority);
  expect(readFileSync(join(folder, 'tls/hub.pem'), 'utf8')).toBe(mended.pair.cert);
});
