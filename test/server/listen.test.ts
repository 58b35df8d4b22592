import { createServer, type Server } from 'node:http';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { addresses, listen } from '../../server/listen.ts';

let servers: Server[];
beforeEach(() => {
  servers = [];
});
afterEach(() => {
  for (const server of servers) server.close();
});
const newServer = () => {
  const server = createServer();
  servers.push(server);
  return server;
};
const here = '127.0.0.1';

it('takes any free port when that is asked for', async () => {
  const opened = await listen(newServer(), here, 0);
  expect(opened).toMatchObject({ ok: true, insteadOf: null });
});

it('refuses, in words, a port that was asked for and is taken', async () => {
  const first = await listen(newServer(), here, 0);
  const port = first.ok ? first.port : 0;
  expect(await listen(newServer(), here, port)).toEqual({
    ok: false,
    why:
      `Port ${port} is taken by another program, and screens that know this address would not ` +
      'find the hub at another: stop that program, or say another port with --port.',
  });
});

it('takes the next free port when none was asked for, and says so', async () => {
  await listen(newServer(), here, null);
  const second = await listen(newServer(), here, null);
  expect(second).toMatchObject({ ok: true, insteadOf: 4600 });
  expect(second.ok && second.port).toBeGreaterThan(4600);
});

it('says that an address is not of this machine', async () => {
  // 192.0.2.0/24 is kept for documentation (RFC 5737): no machine has it.
  expect(await listen(newServer(), '192.0.2.1', 0)).toEqual({
    ok: false,
    why: '192.0.2.1 is no address of this machine: leave --host out.',
  });
});

it('spells addresses as a browser takes them', () => {
  expect(addresses(here, 4600)).toEqual(['http://127.0.0.1:4600']);
  expect(addresses('fe80::1', 4600)).toEqual(['http://[fe80::1]:4600']);
  expect(addresses('0.0.0.0', 4600)).toContain('http://127.0.0.1:4600');
});
