import { once } from 'node:events';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import express from 'express';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { createApp } from '../../../server/http/index.ts';
import type { Health } from '../../../server/hub/index.ts';

let dist: string;
let server: Server;
let health: Health;
let base: string;

beforeEach(async () => {
  dist = mkdtempSync(join(tmpdir(), 'coalface-dist-'));
  mkdirSync(join(dist, 'assets'));
  writeFileSync(join(dist, 'index.html'), '<title>screens</title>');
  writeFileSync(join(dist, 'assets/wall-0f3a.js'), 'export {};');
  health = { epoch: 'e1', seq: 7, screens: 2, readOnly: null };
  const screens = () => [{ path: '/smoker.html', name: { en: 'Smokers' } }];
  server = createServer(
    createApp({
      dist,
      health: () => health,
      screens,
      standards: () => null,
      install: express.Router(),
      firstWords: express.Router(),
      doors: express.Router(),
      report: () => {},
    }),
  );
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  base = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
});
afterEach(() => {
  server.close();
  rmSync(dist, { recursive: true });
});

it('serves a page that runs no inline script, is in no frame and tells nobody of it', async () => {
  const { headers, status } = await fetch(`${base}/`);
  expect(status).toBe(200);
  const policy = headers.get('content-security-policy') ?? '';
  expect(policy).toContain("script-src 'self'");
  expect(policy).not.toContain('unsafe');
  expect(policy).toContain("frame-ancestors 'none'");
  expect(headers.get('x-content-type-options')).toBe('nosniff');
  expect(headers.get('referrer-policy')).toBe('no-referrer');
  expect(headers.get('x-powered-by')).toBeNull();
});

it('lets a screen keep assets for ever and asks for pages anew', async () => {
  const [page, asset] = await Promise.all(
    ['/index.html', '/assets/wall-0f3a.js'].map((path) => fetch(base + path)),
  );
  expect(page?.headers.get('cache-control')).toBe('no-cache');
  expect(asset?.headers.get('cache-control')).toContain('immutable');
});

it('says how the hub is, and that it is not well when it keeps nothing more', async () => {
  const well = await fetch(`${base}/health`);
  expect([well.status, await well.json()]).toEqual([200, health]);
  health = { ...health, readOnly: { atSeq: 7, why: 'altered' } };
  expect((await fetch(`${base}/health`)).status).toBe(503);
});

it('lists the screens that there are', async () => {
  const listed = await fetch(`${base}/screens.json`);
  expect(await listed.json()).toEqual([{ path: '/smoker.html', name: { en: 'Smokers' } }]);
});

it('says in words that there is no such page', async () => {
  const missing = await fetch(`${base}/kitchen`);
  expect(missing.status).toBe(404);
  expect(await missing.text()).toContain('no such page');
});

it('serves nothing from outside its folder', async () => {
  const outside = await fetch(`${base}/..%2f..%2fetc/passwd`);
  expect(outside.status).toBe(404);
});
