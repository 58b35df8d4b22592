import { once } from 'node:events';
import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { io, type Socket } from 'socket.io-client';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openSqliteLog, walk } from '../../server/store/index.ts';
import type { Event } from '../../shared/day/index.ts';
import { must } from '../../shared/kernel/index.ts';
import type { Answer } from '../../shared/protocol/index.ts';
import { PROTOCOL } from '../../shared/protocol/index.ts';
import { endAllPrograms, runProgram } from './program.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'coalface-main-'));
});
afterEach(() => {
  endAllPrograms();
  rmSync(folder, { recursive: true });
});
/** Each run compiles the hub's sources anew. */
const TIMEOUT_MS = 120_000;

function openScreen(address: string): Socket {
  const auth = { protocol: PROTOCOL, screenId: 'wall-1', face: { kind: 'smoker' } };
  return io(address, { auth, transports: ['websocket'], forceNew: true, reconnection: false });
}

const note = (n: number) => ({
  kind: 'note',
  id: `note-${n}`,
  personId: null,
  screenId: null,
  tappedAt: Date.now(),
  text: `number ${n}`,
  task: null,
});

async function eventsIn(path: string): Promise<Event[]> {
  const log = openSqliteLog(join(path, 'log.sqlite'));
  const events: Event[] = [];
  const { broken } = await walk(log, (event) => events.push(event));
  await log.close();
  expect(broken).toBeNull();
  return events;
}

const noteTexts = (events: readonly Event[]) =>
  events.flatMap((event) => (event.kind === 'noteWritten' ? [event.text] : []));

describe('the demo', () => {
  it(
    'says where its screens are, is ready last, and leaves nothing behind on Ctrl-C',
    async () => {
      const hub = runProgram('--port', '0');
      const address = await hub.address();
      expect(hub.lines.at(-1)).toBe('Ready.');
      expect(hub.lines).toContain(`  Trim: ${address}/station.html?station=trim`);
      expect(hub.lines).toContain(`  Smokers: ${address}/smoker.html`);
      const health = await (await fetch(`${address}/health`)).json();
      // Last night's work is in its log.
      expect(health).toMatchObject({ readOnly: null, screens: 0 });
      expect(health.seq).toBeGreaterThan(50);
      const path = must(/\((\/.*)\)/.exec(hub.lines[0] ?? '')?.[1], 'its folder');
      expect(existsSync(join(path, 'log.sqlite'))).toBe(true);
      expect(await hub.kill('SIGINT')).toBe(0);
      expect(existsSync(path)).toBe(false);
      expect(hub.lines.at(-1)).toBe('Stopped. The demo was thrown away.');
      expect(hub.errors()).toBe('');
    },
    TIMEOUT_MS,
  );
});

describe('a terminal that is closed', () => {
  // On Windows no program sends another this signal.
  const ways: [string, boolean][] = [
    ['and still takes what is said', false],
    ['and takes nothing any more', true],
  ];
  it.each(process.platform === 'win32' ? [] : ways)(
    'ends the hub as a kill does, and leaves nothing behind (%s)',
    async (_what, isDeaf) => {
      const hub = runProgram('--port', '0');
      await hub.address();
      const path = must(/\((\/.*)\)/.exec(hub.lines[0] ?? '')?.[1], 'its folder');
      expect(existsSync(join(path, 'log.sqlite'))).toBe(true);
      if (isDeaf) hub.hangUp();
      expect(await hub.kill('SIGHUP')).toBe(0);
      expect(existsSync(path)).toBe(false);
      if (!isDeaf) expect(hub.lines.at(-1)).toBe('Stopped. The demo was thrown away.');
      expect(hub.errors()).toBe('');
    },
    TIMEOUT_MS,
  );
});

describe('a start that is broken off by Ctrl-C', () => {
  it.each(['a passing folder', 'one of its own'])(
    'leaves nothing half-made behind, in %s',
    async (which) => {
      const isPassing = which === 'a passing folder';
      const hub = runProgram(...(isPassing ? [] : ['--demo', folder]), '--port', '0');
      while (hub.lines.length === 0) await new Promise((wait) => setTimeout(wait, 5));
      const said = must(hub.lines[0], 'what it said first');
      const path = must(/(?:Kept in |\()(\/[^,)]*)/.exec(said)?.[1], 'its folder');
      expect(await hub.kill('SIGINT')).toBe(130);
      expect(hub.lines.at(-1)).toBe('Stopped before it was ready.');
      expect(hub.errors()).toBe('');
      const left = existsSync(path) ? readdirSync(path).sort() : [];
      const files = ['catalogue.json', 'kitchen.json', 'lock.sqlite', 'plans', 'schema'];
      expect(left).toEqual(isPassing ? [] : files);
    },
    TIMEOUT_MS,
  );
});

describe('a hub that is killed', () => {
  it(
    'has every tap that it acknowledged, once, and goes on with the same answers',
    async () => {
      const hub = runProgram('--demo', folder, '--port', '0');
      const screen = openScreen(await hub.address());
      const answered = new Map<number, Answer>();
      let enough = () => {};
      const some = new Promise<void>((resolve) => {
        enough = resolve;
      });
      for (let n = 0; n < 18; n++) {
        screen.emit('command', note(n), (answer: Answer) => {
          answered.set(n, answer);
          if (answered.size === 6) enough();
        });
      }
      await some;
      expect(await hub.kill('SIGKILL')).toBeNull();
      screen.disconnect();
      const acknowledged = [...answered.keys()].map((n) => `number ${n}`);
      const texts = noteTexts(await eventsIn(folder));
      expect(texts).toEqual(expect.arrayContaining(acknowledged));

      const again = runProgram('--demo', folder, '--port', '0');
      const back = openScreen(await again.address());
      for (const [n, answer] of answered) {
        expect(await back.timeout(20_000).emitWithAck('command', note(n))).toEqual(answer);
      }
      back.disconnect();
      expect(await again.kill('SIGTERM')).toBe(0);
      const kept = noteTexts(await eventsIn(folder));
      expect(new Set(kept).size).toBe(kept.length);
    },
    TIMEOUT_MS,
  );
});

describe('a kitchen of one’s own', () => {
  it(
    'is furnished where the folder is empty, and keeps a second hub out',
    async () => {
      const hub = runProgram('--data', folder, '--port', '0');
      const address = await hub.address();
      expect(readdirSync(folder)).toEqual(
        expect.arrayContaining(['kitchen.json', 'catalogue.json', 'plans', 'log.sqlite']),
      );
      const second = runProgram('--data', folder, '--port', '0');
      expect(await second.ended()).toBe(1);
      expect(second.errors()).toContain('is held by another hub: process ');
      expect(second.errors()).toContain(`its screens are at ${address}`);
      expect(await hub.kill('SIGINT')).toBe(0);
      expect(hub.lines.at(-1)).toBe(`Stopped. The day is kept in ${folder}.`);
      expect((await eventsIn(folder)).map(({ kind }) => kind)).toEqual(['planAdopted']);
    },
    TIMEOUT_MS,
  );
});

describe('a port that another program has', () => {
  it(
    'is not changed for another where it was asked for, and nothing is served',
    async () => {
      const other = createServer().listen(0, '127.0.0.1');
      await once(other, 'listening');
      const { port } = other.address() as AddressInfo;
      const hub = runProgram('--data', folder, '--port', String(port));
      expect(await hub.ended()).toBe(1);
      expect(hub.errors()).toMatch(
        new RegExp(`^Port ${port} is taken by another program, .*\\.\n$`),
      );
      expect(hub.lines.join()).not.toContain('http');
      other.close();
    },
    TIMEOUT_MS,
  );
});
