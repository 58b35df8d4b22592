import { createHash } from 'node:crypto';
import { chmodSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import {
  behindItsBack,
  dayAfter,
  firstDay,
  type Kitchen,
  kitchenFolder,
  openKitchen,
  writeDays,
} from './kitchen-days.ts';

let folder: ReturnType<typeof kitchenFolder>;
let kitchen: Kitchen;

beforeEach(() => {
  folder = kitchenFolder();
});
afterEach(async () => {
  await kitchen.close();
  folder.remove();
});

/** So many days, the last of them running, each sealed when the next began. */
async function days(count: number, how: Parameters<typeof writeDays>[2] = {}) {
  await writeDays(folder.path, count, how);
  kitchen = await openKitchen(folder.path);
  await kitchen.record.rest();
}

async function again() {
  await kitchen.close();
  kitchen = await openKitchen(folder.path);
}

const looked = () =>
  vi.waitFor(() => expect(kitchen.chain.state).not.toBe('under way'), { timeout: 5_000 });

const keyFile = () => join(folder.path, 'sign.key');

describe('a day that is over', () => {
  it('is signed when a person closes it, and once more when another begins', async () => {
    await days(2, { works: 40 });
    await kitchen.put({ kind: 'closeDay' });
    await kitchen.record.rest();
    const seals = kitchen.record.store.seals();
    expect(seals.map(({ n, day, why }) => [n, day, why])).toEqual([
      [1, firstDay, 'closed'],
      [2, firstDay, 'turned'],
      [3, dayAfter(1), 'closed'],
    ]);
    expect(seals.every(({ closedBy }) => closedBy !== null)).toBe(true);
    expect(kitchen.record.store.record(firstDay)?.lots.length).toBeGreaterThan(2);
    expect(kitchen.record.store.evidence(firstDay)?.work.length).toBe(40);
  });

  it('is signed when another begins, though nobody closed it', async () => {
    await days(2, { closes: false });
    const [only, none] = kitchen.record.store.seals();
    expect(only).toMatchObject({ day: firstDay, why: 'turned', closedBy: null });
    expect(none).toBeUndefined();
  });

  it('is signed with a key that nobody else on the machine can read', async () => {
    await days(1);
    expect(statSync(keyFile()).mode & 0o777).toBe(0o600);
  });

  it('has its key shut again where it was left open to others', async () => {
    await days(1);
    chmodSync(keyFile(), 0o644);
    await again();
    expect(statSync(keyFile()).mode & 0o777).toBe(0o600);
  });
});

describe('opening', () => {
  it('begins after the last day that is over, and comes to the same day', async () => {
    await days(3);
    await kitchen.put({ kind: 'note', text: 'a word', task: null });
    const { happened, kept, record, story, who, tasks, seq } = kitchen.hub.state;
    const whole = { happened, kept, record, story, who, tasks, seq };
    await again();
    expect(kitchen.hub.openedFrom).not.toBeNull();
    expect(kitchen.hub.state).toMatchObject(whole);
    await looked();
    expect(kitchen.chain.state).toBe('whole');
    expect(kitchen.hub.health.readOnly).toBeNull();
  });

  it('reads all of it where the key is another, and signs nothing twice', async () => {
    await days(2);
    await kitchen.close();
    rmSync(keyFile());
    kitchen = await openKitchen(folder.path);
    expect(kitchen.hub.openedFrom).toBeNull();
    await kitchen.record.rest();
    expect(kitchen.record.store.seals().map(({ n }) => n)).toEqual([1, 2]);
  });

  it('reads all of it where the seals are gone, and signs what it finds', async () => {
    await days(2);
    await kitchen.close();
    rmSync(join(folder.path, 'record.sqlite'));
    kitchen = await openKitchen(folder.path);
    await kitchen.record.rest();
    expect(kitchen.record.store.days()).toEqual([firstDay]);
  });

  it('finds an entry of an earlier day that was altered, and keeps nothing more', async () => {
    await days(2);
    await kitchen.close();
    behindItsBack(folder.path, (db) => {
      db.exec(`update entry set bytes = cast(replace(cast(bytes as text), 'Elm', 'Ash') as blob)
               where seq = 2`);
    });
    kitchen = await openKitchen(folder.path);
    await looked();
    expect(kitchen.chain.state).toBe('broken');
    expect(kitchen.hub.health.readOnly).toEqual({ atSeq: 1, why: 'altered' });
    const answer = await kitchen.put({ kind: 'closeDay' });
    expect(answer).toMatchObject({ ok: false, refusal: { rule: 'read-only' } });
  });

  it('finds one of the running day before anything is shown', async () => {
    await days(2);
    await kitchen.close();
    behindItsBack(folder.path, (db) => {
      db.exec(`update entry set bytes = cast(replace(cast(bytes as text), 'Elm', 'Ash') as blob)
               where seq = (select seq - 2 from head)`);
      db.exec(`update entry set hash = zeroblob(32) where seq = (select seq - 2 from head)`);
    });
    kitchen = await openKitchen(folder.path);
    expect(kitchen.hub.health.readOnly?.why).toBe('altered');
  });

  it('finds a day that was written anew with a chain that holds', async () => {
    await days(2);
    await kitchen.close();
    behindItsBack(folder.path, rewriteFrom(2));
    kitchen = await openKitchen(folder.path);
    await looked();
    expect(kitchen.hub.health.readOnly?.why).toBe('altered');
  });
});

/** Changes an entry and makes every hash after it anew, as who can write the file could. */
const rewriteFrom = (seq: number) => (db: Database.Database) => {
  const rows = db
    .prepare<[], { seq: number; bytes: Buffer }>('select seq, bytes from entry order by seq')
    .all();
  let hash = Buffer.alloc(32);
  for (const row of rows) {
    const bytes =
      row.seq === seq ? Buffer.from(row.bytes.toString().replace('Elm', 'Ash')) : row.bytes;
    hash = createHash('sha256').update(hash).update(bytes).digest();
    db.prepare('update entry set bytes = ?, hash = ? where seq = ?').run(bytes, hash, row.seq);
  }
  db.prepare('update head set hash = ?').run(hash);
};
