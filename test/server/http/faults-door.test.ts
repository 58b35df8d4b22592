import { once } from 'node:events';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import express from 'express';
import { afterEach, expect, it } from 'vitest';
import { faultsDoor } from '../../../server/http/index.ts';
import type { ReportLine } from '../../../server/report.ts';
import type { WhoAmI } from '../../../shared/protocol/index.ts';

const WALL: WhoAmI = {
  isOpen: false,
  isUnclaimed: false,
  place: { name: 'Trim wall', path: '/station.html?station=trim' },
};
const FAULT = { page: '/station.html?station=trim', said: 'Error: now-line cannot be drawn' };

let server: Server;
afterEach(() => server.close());

async function open(me: WhoAmI) {
  const lines: ReportLine[] = [];
  const door = faultsDoor({ me: () => ({ ok: true, ...me }), report: (line) => lines.push(line) });
  server = createServer(express().use(door)).listen(0, '127.0.0.1');
  await once(server, 'listening');
  const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  const tell = (fault: unknown) =>
    fetch(address, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify(fault),
    });
  return { lines, tell };
}

it('writes down what failed on a screen, and on which', async () => {
  const { lines, tell } = await open(WALL);
  expect((await tell(FAULT)).status).toBe(200);
  expect(lines).toEqual([
    { level: 'fault', what: 'something failed on a screen', screen: 'Trim wall', ...FAULT },
  ]);
});

it('writes nothing for a screen that nobody let in, and nothing but what it asks for', async () => {
  const stranger = await open({ ...WALL, place: null });
  expect(await (await stranger.tell(FAULT)).json()).toMatchObject({ ok: false });
  expect(stranger.lines).toEqual([]);
  server.close();
  const { lines, tell } = await open({ ...WALL, place: null, isOpen: true });
  expect((await tell({ ...FAULT, said: '' })).status).toBe(400);
  expect((await tell({ ...FAULT, level: 'note' })).status).toBe(400);
  expect(lines).toEqual([]);
  await tell(FAULT);
  expect(lines).toHaveLength(1);
});

it('is not filled by a screen that tells without end', async () => {
  const { lines, tell } = await open(WALL);
  for (let n = 0; n < 90; n++) await tell({ ...FAULT, said: `fault ${n}` });
  expect(lines.length).toBeGreaterThan(20);
  expect(lines.length).toBeLessThan(85);
});
