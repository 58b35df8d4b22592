import { X509Certificate } from 'node:crypto';
import { once } from 'node:events';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import express from 'express';
import { afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { installDoors } from '../../../server/http/index.ts';
import { makeAuthority } from '../../../server/transport/certificates.ts';
import { permittedFor } from '../../../server/transport/permitted.ts';

let pem: string;
beforeAll(async () => {
  const names = { dns: ['localhost'], addresses: ['127.0.0.1'] };
  pem = (await makeAuthority('Smoke', permittedFor(names), Date.now())).cert;
});

const SAFE = 'https://192.168.1.5:4600';
let from: string;
let vouched: 'by us' | 'by another';
let server: Server;
let base: string;

beforeEach(async () => {
  from = '192.168.1.77';
  vouched = 'by us';
  const authority = () => (vouched === 'by us' ? { pem, fingerprint: 'AA:BB' } : null);
  const app = express();
  app.use(installDoors({ tls: { authority, name: null }, addresses: () => [SAFE] }));
  app.use((_asked, answer) => answer.send('the screens'));
  server = createServer(app);
  // As if it came from another machine: a test has only one.
  server.on('connection', (socket) =>
    Object.defineProperty(socket, 'remoteAddress', { value: from }),
  );
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  base = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
});
afterEach(() => {
  server.closeAllConnections();
  server.close();
});

const page = { headers: { accept: 'text/html' }, redirect: 'manual' } as const;

describe('another machine that asks without TLS', () => {
  it('is led to the page with the certificate, and from there to where it wanted', async () => {
    const { status, headers } = await fetch(`${base}/station.html?station=trim`, page);
    expect(status).toBe(307);
    const to = new URL(headers.get('location') ?? '', base);
    expect(to.pathname).toBe('/install.html');
    expect(to.searchParams.get('to')).toBe('/station.html?station=trim');
  });

  it('is never led to another host', async () => {
    const { headers } = await fetch(`${base}//evil.example/x`, page);
    const to = new URL(headers.get('location') ?? '', base);
    expect(to.host).toBe(new URL(base).host);
    expect(to.searchParams.get('to')).toBe('/evil.example/x');
  });

  it.each(['/install.html', '/install.json', '/assets/x.js', '/icon.svg'])(
    'gets %s',
    async (path) => {
      expect((await fetch(base + path)).status).toBe(200);
    },
  );

  it('gets the certificate as devices install it, in DER', async () => {
    const answer = await fetch(`${base}/coalface.crt`);
    expect(answer.headers.get('content-type')).toBe('application/x-x509-ca-cert');
    const bytes = Buffer.from(await answer.arrayBuffer());
    expect(new X509Certificate(bytes).fingerprint256).toBe(new X509Certificate(pem).fingerprint256);
  });

  it.each([
    ['GET', '/screens.json'],
    ['POST', '/api/claim'],
    ['GET', '/health'],
    ['GET', '/assets/../api/me'],
  ])('gets nothing of the day: %s %s', async (method, path) => {
    const answer = await fetch(base + path, { method });
    expect([answer.status, await answer.text()]).toEqual([403, 'Only over https.\n']);
  });

  it('is sent on at once where nothing has to be installed', async () => {
    vouched = 'by another';
    const { headers } = await fetch(`${base}/desk.html`, page);
    expect(headers.get('location')).toBe(`${SAFE}/desk.html`);
    expect((await fetch(`${base}/coalface.crt`, { redirect: 'manual' })).status).toBe(403);
  });
});

it.each(['127.0.0.1', '::1', '::ffff:127.0.0.1', '127.8.8.8'])(
  'lets this machine itself, %s, ask for everything in the open',
  async (address) => {
    from = address;
    expect(await (await fetch(`${base}/desk.html`)).text()).toBe('the screens');
  },
);

it('tells a device what it has to know to trust us', async () => {
  const answer = await fetch(`${base}/install.json`);
  expect(await answer.json()).toEqual({ fingerprint: 'AA:BB', addresses: [SAFE] });
});
