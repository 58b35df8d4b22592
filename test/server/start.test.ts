import { once } from 'node:events';
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Options } from '../../server/options.ts';
import type { ReportLine } from '../../server/report.ts';
import { type Started, startHub } from '../../server/start.ts';
import { openSqliteLog } from '../../server/store/index.ts';
import { type LocalDay, wallTime } from '../../shared/kernel/index.ts';

let folder: string;
let lines: string[];
let reports: ReportLine[];
let started: Started | null;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'coalface-start-'));
  started = null;
});
afterEach(async () => {
  await stop();
  rmSync(folder, { recursive: true });
});

async function start(
  kind: 'kitchen' | 'demo' = 'kitchen',
  more: Pick<Options, 'demoFrom'> = {},
): Promise<Started> {
  lines = [];
  reports = [];
  started = await startHub(
    {
      folder: { kind, path: folder },
      speed: 1,
      port: 0,
      host: '127.0.0.1',
      isOpen: false,
      isClaiming: false,
      ...more,
    },
    { say: (line) => lines.push(line), report: (line) => reports.push(line) },
  );
  return started;
}

async function stop() {
  if (started?.ok) await started.stop();
  started = null;
}

const address = () => /http:\S+(?=\/$)/m.exec(lines.join('\n'))?.[0] ?? '';
const health = async () => (await fetch(`${address()}/health`)).json();

function breakFile(name: string, key: string, value: unknown) {
  const file = join(folder, name);
  const json = JSON.parse(readFileSync(file, 'utf8'));
  writeFileSync(file, JSON.stringify({ ...json, [key]: value }));
}

describe('a day that is tried out before it is due', () => {
  it('begins at the moment of the kitchen’s wall that was asked for, once', async () => {
    const tomorrow = new Date(Date.now() + 86_400_000).toISOString().slice(0, 10) as LocalDay;
    const demoFrom = { day: tomorrow, time: '09:30' };
    expect((await start('kitchen', { demoFrom })).ok).toBe(true);
    await stop();
    const { shownMs } = JSON.parse(readFileSync(join(folder, 'clock.json'), 'utf8'));
    const { zone } = JSON.parse(readFileSync(join(folder, 'kitchen.json'), 'utf8'));
    expect(wallTime(shownMs, zone)).toEqual(demoFrom);
    const again = await start('kitchen', { demoFrom });
    expect(again).toMatchObject({
      ok: false,
      lines: [expect.stringContaining('has a log'), expect.anything()],
    });
  });
});

describe('broken files', () => {
  it('keep a kitchen without a day from starting, all that is wrong said at once', async () => {
    await start();
    await stop();
    breakFile('kitchen.json', 'zone', 'Mars');
    breakFile('catalogue.json', 'dishes', 7);
    rmSync(join(folder, 'log.sqlite'));
    const { ok, ...refused } = await start();
    expect(ok).toBe(false);
    const said = JSON.stringify(refused);
    expect(said).toContain('kitchen.json: zone: found \\"Mars\\"; allowed: a time zone');
    expect(said).toContain('catalogue.json: dishes: found 7; allowed: a list');
  });

  it('leave a running day as it is', async () => {
    await start();
    await stop();
    breakFile('kitchen.json', 'zone', 'Mars');
    expect(await start()).toMatchObject({ ok: true });
    expect(lines.join('\n')).toContain('kitchen.json: zone: found "Mars"');
    expect(await health()).toMatchObject({ seq: 1, readOnly: null });
  });

  it('are noticed while the hub runs, as is a sound change', async () => {
    await start();
    const until = async (line: string) => {
      while (!lines.join('\n').includes(line)) await new Promise((wait) => setTimeout(wait, 20));
    };
    const before = readFileSync(join(folder, 'catalogue.json'), 'utf8');
    breakFile('catalogue.json', 'dishes', 7);
    await until('The running day stays as it is.');
    expect(lines.join('\n')).toContain('catalogue.json: dishes: found 7');
    writeFileSync(join(folder, 'catalogue.json'), before);
    breakFile('kitchen.json', 'name', 'Four Elms');
    await until('A new plan was taken up.');
    expect(await health()).toMatchObject({ seq: 2 });
  });
});

describe('a start that comes to nothing', () => {
  const ownFiles = ['catalogue.json', 'kitchen.json', 'lock.sqlite', 'plans', 'schema'];
  const inFolder = () => readdirSync(folder).sort();

  async function startAt(port: number, more: Partial<Options> = {}) {
    const options = { speed: 1, host: '127.0.0.1', isOpen: false, isClaiming: false, ...more };
    const choice = { kind: 'kitchen', path: folder } as const;
    const tools = { say: () => {}, report: () => {} };
    return await startHub({ folder: choice, port, ...options }, tools);
  }
  async function takenPort() {
    const other = createServer().listen(0, '127.0.0.1');
    await once(other, 'listening');
    return { port: (other.address() as AddressInfo).port, free: () => void other.close() };
  }

  it('leaves no log and no keys behind: not where a plan is broken, nor a port taken', async () => {
    const { port, free } = await takenPort();
    expect(await startAt(port, { tls: { kind: 'own' }, speed: 60 })).toMatchObject({ ok: false });
    free();
    expect(inFolder()).toEqual(ownFiles);
    breakFile('kitchen.json', 'zone', 'Mars');
    expect(await startAt(0)).toMatchObject({ ok: false });
    expect(inFolder()).toEqual(ownFiles);
    breakFile('kitchen.json', 'zone', 'America/Chicago');
    expect(await start()).toMatchObject({ ok: true });
  });

  it('leaves what was there before as it was', async () => {
    await start();
    await stop();
    const before = new Map(inFolder().map((name) => [name, statSync(join(folder, name)).ino]));
    const { port, free } = await takenPort();
    expect(await startAt(port)).toMatchObject({ ok: false });
    free();
    before.delete('holder.json');
    expect(inFolder()).toEqual([...before.keys()]);
    for (const [name, ino] of before) expect(statSync(join(folder, name)).ino).toBe(ino);
    expect(await start()).toMatchObject({ ok: true });
    expect(await health()).toMatchObject({ seq: 1, readOnly: null });
  });
});

describe('a damaged log', () => {
  it('is shown up to the break, and nothing more is kept', async () => {
    await start('demo');
    await stop();
    const db = new Database(join(folder, 'log.sqlite'));
    db.exec('drop trigger entry_remains; delete from entry where seq = 30');
    db.close();
    expect(await start('demo')).toMatchObject({ ok: true });
    expect(lines).toContain('The log is damaged (missing) after entry 29.');
    expect(reports).toMatchObject([{ level: 'fault', what: 'the log is damaged', atSeq: 29 }]);
    expect(await health()).toMatchObject({ readOnly: { atSeq: 29, why: 'missing' } });
  });
});

describe('a machine whose clock was set back', () => {
  it('is told so in a sentence, with both times and what to do', async () => {
    await start();
    await stop();
    const back = vi.spyOn(Date, 'now').mockReturnValue(Date.now() - 3 * 3_600_000);
    expect(await start()).toMatchObject({ ok: true });
    expect(lines.join('\n')).toMatch(
      /The clock of this machine shows \S+ \S+, and the log was last written at \S+ \S+: till/,
    );
    expect(await health()).toMatchObject({ seq: 1, readOnly: null });
    await stop();
    back.mockRestore();
    await start();
    expect(lines.join('\n')).not.toContain('The clock of this machine');
  });
});

describe('the demo that is kept', () => {
  it('goes on where it was', async () => {
    await start('demo');
    const { seq } = await health();
    await stop();
    await start('demo');
    expect(await health()).toMatchObject({ seq });
  });
});

describe('a folder whose log is another’s', () => {
  it('is refused in words', async () => {
    const db = new Database(join(folder, 'log.sqlite'));
    db.exec('create table song (name text)');
    db.close();
    writeFileSync(join(folder, 'kitchen.json'), '{}');
    expect(await start()).toMatchObject({
      ok: false,
      lines: [expect.stringContaining('is a database of another program')],
    });
    expect(() => openSqliteLog(join(folder, 'log.sqlite'))).toThrow();
  });
});
