import { once } from 'node:events';
import { createServer, type Server } from 'node:http';
import { get, request } from 'node:https';
import { type AddressInfo, connect } from 'node:net';
import { connect as connectTls } from 'node:tls';
import { afterEach, beforeAll, beforeEach, expect, it } from 'vitest';
import { makeAuthority, type Pair, signFor } from '../../../server/transport/certificates.ts';
import { type Renewable, speakTls } from '../../../server/transport/one-port.ts';
import { permittedFor } from '../../../server/transport/permitted.ts';

const names = { dns: ['localhost'], addresses: ['127.0.0.1'] };
let authority: Pair;
let first: Pair;
let second: Pair;
beforeAll(async () => {
  authority = await makeAuthority('Smoke', permittedFor(names), Date.now());
  [first, second] = await Promise.all([
    signFor(names, authority, Date.now()),
    signFor(names, authority, Date.now()),
  ]);
});

let server: Server;
let speaking: Renewable;
let port: number;
beforeEach(async () => {
  server = createServer(async (asked, answer) => {
    let bytes = 0;
    for await (const chunk of asked) bytes += chunk.length;
    answer.end(`${'encrypted' in asked.socket ? 'tls' : 'plain'} ${bytes}`);
  });
  speaking = speakTls(server, first);
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  port = (server.address() as AddressInfo).port;
});
afterEach(() => {
  server.closeAllConnections();
  server.close();
});

function overTls(body: string): Promise<string> {
  return new Promise((resolve, reject) => {
    const asked = request(
      { host: '127.0.0.1', port, ca: authority.cert, method: 'POST', agent: false },
      async (answer) => {
        let said = '';
        for await (const chunk of answer) said += chunk;
        resolve(said);
      },
    );
    asked.on('error', reject);
    asked.end(body);
  });
}

async function overPlain(body: string): Promise<string> {
  return (await fetch(`http://127.0.0.1:${port}/`, { method: 'POST', body })).text();
}

it('speaks TLS and plain HTTP on one port, long messages too', async () => {
  const long = 'x'.repeat(300_000);
  const answers = await Promise.all([overTls(long), overPlain(long), overTls(''), overPlain('')]);
  expect(answers).toEqual(['tls 300000', 'plain 300000', 'tls 0', 'plain 0']);
});

it('waits for a client whose first byte comes alone', async () => {
  const socket = connect(port, '127.0.0.1');
  await once(socket, 'connect');
  socket.setNoDelay();
  socket.write('G');
  // The rest comes in a packet of its own.
  await new Promise((resolve) => setTimeout(resolve, 50));
  socket.write('ET / HTTP/1.1\r\nHost: pit\r\nConnection: close\r\n\r\n');
  let said = '';
  for await (const chunk of socket) said += chunk;
  expect(said).toContain('plain 0');
});

it('goes on when somebody speaks neither, or hangs up without a word', async () => {
  const silent = connect(port, '127.0.0.1');
  await once(silent, 'connect');
  silent.destroy();
  const other = connect(port, '127.0.0.1');
  other.on('error', () => {}).resume();
  other.write(Buffer.from([0x16, 0x03, 0xff, 0xff, 0xff]));
  other.end('nonsense');
  await once(other, 'close');
  expect(await overTls('')).toBe('tls 0');
});

it('shows another certificate from the next link on, and leaves the open ones alone', async () => {
  const serialOf = async () => {
    const socket = connectTls({ host: '127.0.0.1', port, ca: authority.cert });
    await once(socket, 'secureConnect');
    return { socket, serial: socket.getPeerCertificate().serialNumber };
  };
  const before = await serialOf();
  speaking.renew(second);
  const after = await serialOf();
  expect(after.serial).not.toBe(before.serial);
  before.socket.write('GET / HTTP/1.1\r\nHost: pit\r\nConnection: close\r\n\r\n');
  let said = '';
  for await (const chunk of before.socket) said += chunk;
  expect(said).toContain('tls 0');
  after.socket.destroy();
});

it('does not take somebody else’s word: a client without the authority hangs up', async () => {
  const asked = get({ host: '127.0.0.1', port, agent: false });
  await expect(once(asked, 'response')).rejects.toThrow(/verify/);
});
