import { closeSync, mkdtempSync, openSync, rmSync, writeFileSync, writeSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { NotOurLog, openSqliteLog, readSqliteLog, walk } from '../../../server/store/index.ts';
import { eventLogContract, oneNote } from '../../contracts/event-log.ts';

eventLogContract('SQLite', () => {
  const folder = mkdtempSync(join(tmpdir(), 'coalface-log-'));
  const file = join(folder, 'log.sqlite');
  const behindItsBack = (sql: string) => {
    const db = new Database(file);
    db.exec(`drop trigger entry_stays; drop trigger entry_remains; ${sql}`);
    db.close();
  };
  return {
    open: () => openSqliteLog(file),
    alter: (seq) =>
      behindItsBack(
        `update entry set bytes = cast(replace(cast(bytes as text), 'number', 'nunber') as blob)
         where seq = ${seq}`,
      ),
    remove: (seq) => behindItsBack(`delete from entry where seq = ${seq}`),
    swap: (a, b) =>
      behindItsBack(
        `update entry set seq = -1 where seq = ${a}; update entry set seq = ${a} where seq = ${b};
         update entry set seq = ${b} where seq = -1`,
      ),
    dispose: () => rmSync(folder, { recursive: true }),
  };
});

describe('the file', () => {
  let folder: string;
  let file: string;
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'coalface-log-'));
    file = join(folder, 'log.sqlite');
  });
  afterEach(() => rmSync(folder, { recursive: true }));

  it('is fully synced at the first opening and at every later one', async () => {
    // The opening itself throws unless SQLite says FULL; a plain second connection shows why it
    // has to ask: what it gets by itself on this file is less.
    for (const _opening of [1, 2, 3]) await openSqliteLog(file).close();
    const plain = new Database(file);
    const byItself = plain.pragma('synchronous', { simple: true });
    plain.close();
    expect(byItself).toBe(1);
  });

  it('lets nobody change or remove an entry', async () => {
    const log = openSqliteLog(file);
    await log.claim('e1');
    await log.append(oneNote(1, 'e1'));
    await log.close();
    const db = new Database(file);
    expect(() => db.exec('update entry set command = 0')).toThrow('an entry never changes');
    expect(() => db.exec('delete from entry')).toThrow('an entry is never removed');
    db.close();
  });

  it('is read as it stood at one moment, whatever a hub adds to it meanwhile', async () => {
    const log = openSqliteLog(file);
    await log.claim('e1');
    await log.append(oneNote(1, 'e1'));
    const reader = readSqliteLog(file);
    expect((await reader.head()).seq).toBe(1);
    await log.append(oneNote(2, 'e1'));
    expect(await walk(reader, () => {})).toMatchObject({ seq: 1, broken: null });
    await expect(reader.claim('e2')).rejects.toThrow('readonly');
    await reader.close();
    await log.close();
  });

  it('hands on what can still be read when pages of it are rubbish', async () => {
    const log = openSqliteLog(file);
    await log.claim('e1');
    for (let seq = 1; seq <= 400; seq++) await log.append(oneNote(seq, 'e1'));
    await log.close();
    scribbleOverTheEnd(file);
    const damaged = openSqliteLog(file);
    const { seq, broken } = await walk(damaged, () => {});
    await damaged.close();
    expect(broken).not.toBeNull();
    expect(broken?.seq).toBe(seq + 1);
  });

  it('refuses a database of another program, and a file that is none', () => {
    const other = new Database(file);
    other.exec('create table song (name text)');
    other.close();
    expect(() => openSqliteLog(file)).toThrow(NotOurLog);
    const text = join(folder, 'text.sqlite');
    writeFileSync(text, 'x'.repeat(5000));
    expect(() => openSqliteLog(text)).toThrow('not a database');
  });
});

function scribbleOverTheEnd(file: string) {
  const db = new Database(file);
  const pages = Number(db.pragma('page_count', { simple: true }));
  const size = Number(db.pragma('page_size', { simple: true }));
  const entryPages = db
    .prepare("select pageno from dbstat where name = 'entry' and pagetype = 'leaf' order by pageno")
    .pluck()
    .all() as number[];
  db.close();
  expect(pages).toBeGreaterThan(4);
  const last = entryPages.at(-1) ?? pages;
  const handle = openSync(file, 'r+');
  writeSync(handle, Buffer.alloc(size, 0xff), 0, size, (last - 1) * size);
  closeSync(handle);
}
