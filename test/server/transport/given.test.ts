import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { CannotStart } from '../../../server/cannot-start.ts';
import { makeAuthority, signFor } from '../../../server/transport/certificates.ts';
import { givenCertificate, namesIn } from '../../../server/transport/given.ts';
import { permittedFor } from '../../../server/transport/permitted.ts';

const DAY_MS = 86_400_000;
const now = Date.now();
const names = { dns: ['kitchen.example', 'pit.example'], addresses: ['203.0.113.9'] };

let folder: string;
let files: { cert: string; key: string };
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'coalface-given-'));
  const authority = await makeAuthority('Somebody', permittedFor(names), now);
  const pair = await signFor(names, authority, now);
  files = { cert: join(folder, 'full.pem'), key: join(folder, 'key.pem') };
  writeFileSync(files.cert, pair.cert);
  writeFileSync(files.key, pair.key);
});
afterEach(() => rmSync(folder, { recursive: true }));

it('takes a certificate that somebody else signed, and answers to its names', () => {
  const { pair, authority, lines } = givenCertificate(files, now);
  expect(authority).toBeNull();
  expect(lines).toEqual([]);
  expect(namesIn(pair.cert)).toEqual(['kitchen.example', 'pit.example']);
});

it('says when it is soon to end', () => {
  const { lines } = givenCertificate(files, now + 80 * DAY_MS);
  expect(lines).toEqual([expect.stringContaining('ends on')]);
});

it('refuses, in words, files that are missing, no PEM or do not belong together', async () => {
  const missing = { ...files, cert: join(folder, 'nowhere.pem') };
  const noPem = { ...files, key: files.cert };
  const other = await makeAuthority('Other', permittedFor(names), now);
  const otherKey = join(folder, 'other.pem');
  writeFileSync(otherKey, other.key);
  const foreign = { ...files, key: otherKey };
  const said = [missing, noPem, foreign].map((each) => {
    try {
      return givenCertificate(each, now).lines;
    } catch (fault) {
      return fault instanceof CannotStart ? fault.message : fault;
    }
  });
  expect(said).toEqual([
    expect.stringContaining('nowhere.pem cannot be read'),
    expect.stringContaining('no PEM'),
    expect.stringContaining('is not that of'),
  ]);
});
