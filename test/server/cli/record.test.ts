import { createHash } from 'node:crypto';
import { cpSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { must } from '../../../shared/kernel/index.ts';
import {
  behindItsBack,
  dayAfter,
  firstDay,
  kitchenFolder,
  openKitchen,
  writeDays,
} from '../record/kitchen-days.ts';
import { typed } from './kitchen-at-work.ts';

const folder = kitchenFolder();
const lot = `${firstDay}-1`;

beforeAll(async () => {
  await writeDays(join(folder.path), 3);
  await (await openKitchen(folder.path)).close();
}, 60_000);
afterAll(() => folder.remove());

const kitchen = (...words: readonly string[]) => typed(folder.path, ...words);

/** A copy of the folder with something done to its log. */
function copy(change: Parameters<typeof behindItsBack>[1]) {
  const other = kitchenFolder();
  cpSync(folder.path, other.path, { recursive: true });
  behindItsBack(other.path, change);
  return other;
}

describe('record', () => {
  it('prints a sheet for each day, with the signed head of those that are over', async () => {
    const { said, exit } = await kitchen('record', '.');
    expect(exit).toBe(0);
    expect(said.match(/<article/g)).toHaveLength(3);
    expect(said.match(/Head of the chain/g)).toHaveLength(2);
    expect(said).toContain('Elm &quot;Best&quot; Meats, Inc.');
    expect(said).not.toContain('<script');
  });

  it('says it in Spanish', async () => {
    const { said } = await kitchen('record', '.', '--day', firstDay, '--language', 'es');
    expect(said).toContain('Lotes recibidos');
    expect(said).not.toContain('Lots received');
  });

  it('gives a table whose quotes and commas a reader of RFC 4180 reads back', async () => {
    const { said } = await kitchen('record', '.', '--as', 'csv', '--day', firstDay);
    const [header = '', first = ''] = said.split('\r\n');
    expect(header.split(',')).toContain('supplier');
    expect(first).toContain('"Elm ""Best"" Meats, Inc."');
  });

  it('prints labels with the number that trace is asked for', async () => {
    const { said } = await kitchen('record', '.', '--as', 'labels', '--day', firstDay);
    expect(said).toContain(lot);
  });

  it('says so where the first day lies after the last', async () => {
    const { exit, complaints } = await kitchen(
      ...['record', '.', '--from', dayAfter(1), '--to', firstDay],
    );
    expect(exit).toBe(2);
    expect(complaints).toEqual([`--from ${dayAfter(1)} lies after --to ${firstDay}: change them.`]);
  });

  it('says which days there are where it knows none of those asked for', async () => {
    const { exit, complaints } = await kitchen('record', '.', '--day', '2020-01-01');
    expect(exit).toBe(1);
    expect(complaints.join()).toContain(firstDay);
  });
});

describe('verify', () => {
  const file = () => join(folder.path, 'record.json');

  beforeAll(async () => {
    await kitchen('record', '.', '--as', 'json', '--out', 'record.json', '--to', dayAfter(1));
  });

  it('finds a record as it was made, without its folder', async () => {
    const { exit, said } = await kitchen('verify', 'record.json');
    expect(exit).toBe(0);
    expect(said).toContain(`${firstDay} to ${dayAfter(1)}`);
  });

  it('refuses one in which a byte was changed, and says where', async () => {
    const bytes = readFileSync(file());
    const at = bytes.indexOf('Elm', bytes.indexOf('"entries"'));
    bytes[at] = 'A'.charCodeAt(0);
    writeFileSync(join(folder.path, 'other.json'), bytes);
    const { exit, complaints } = await kitchen('verify', 'other.json');
    expect(exit).toBe(1);
    expect(complaints.join()).toMatch(/Entry \d+ \(line \d+\) is not what was written/);
  });

  it('refuses what is no text', async () => {
    writeFileSync(join(folder.path, 'bytes.json'), Buffer.from([0xff, 0xfe, 0x00]));
    expect((await kitchen('verify', 'bytes.json')).exit).toBe(1);
  });

  it.each([
    ['plain words', 'hello', 'it is not JSON, or was cut short'],
    ['nothing', '', 'it is not JSON, or was cut short'],
    ['another document', '{"day": 1}', 'is missing in it or is something else'],
  ])('says of %s that it is no record, and how to come by one', async (_, text, why) => {
    writeFileSync(join(folder.path, 'odd.json'), text);
    const { exit, complaints } = await kitchen('verify', 'odd.json');
    expect(exit).toBe(1);
    expect(complaints).toHaveLength(1);
    expect(complaints[0]).toContain(why);
    expect(complaints[0]).toContain('record --as json');
  });

  it.each(['--key', '--head'])('asks for a %s as it stands on a sheet', async (option) => {
    const { exit, complaints } = await kitchen('verify', '.', option, 'zzz');
    expect(exit).toBe(2);
    expect(complaints[0]).toMatch(/found zzz; allowed: .*at the foot of a sheet/);
  });

  it('finds the head that stands on a sheet, and no other', async () => {
    const sheet = (await kitchen('record', '.', '--day', firstDay)).said;
    const head = must(/[0-9a-f]{64}/.exec(sheet)?.[0], 'a head');
    expect((await kitchen('verify', '.', '--head', head)).exit).toBe(0);
    expect((await kitchen('verify', 'record.json', '--head', head)).exit).toBe(0);
    const other = await kitchen('verify', '.', '--head', 'f'.repeat(64));
    expect(other.exit).toBe(1);
  });

  it('shows a later day that was written anew, and exports nothing of it', async () => {
    const other = copy((db) => {
      const rows = db
        .prepare<[], { seq: number; bytes: Buffer }>('select seq, bytes from entry order by seq')
        .all();
      let hash = Buffer.alloc(32);
      for (const { seq, bytes } of rows) {
        const text = bytes.toString();
        const isLater = text.includes(`${dayAfter(1)}-1"`) && text.includes('"lotCame"');
        const written = isLater ? Buffer.from(text.replace('Elm', 'Ash')) : bytes;
        hash = createHash('sha256').update(hash).update(written).digest();
        db.prepare('update entry set bytes = ?, hash = ? where seq = ?').run(written, hash, seq);
      }
      db.prepare('update head set hash = ?').run(hash);
    });
    const whole = await typed(other.path, 'verify', '.');
    expect(whole.exit).toBe(1);
    expect(whole.complaints.join()).toContain('signed');
    for (const form of ['json', 'html', 'csv']) {
      const made = await typed(other.path, 'record', '.', '--as', form);
      expect([form, made.exit, made.said]).toEqual([form, 1, '']);
    }
    other.remove();
  });
});

describe('trace', () => {
  it('says where a lot went, in weights that add up to what came', async () => {
    const { exit, said } = await kitchen('trace', lot, '.', '--as', 'json');
    expect(exit).toBe(0);
    const found = JSON.parse(said);
    const sum = (rows: { weightKg: number }[]) => rows.reduce((a, b) => a + b.weightKg, 0);
    const whole =
      sum(found.services) + sum(found.tubs) + sum(found.kept) + found.lossKg + found.leftKg;
    expect(whole).toBeCloseTo(found.lot.weightKg, 6);
  });

  it('says it in words, as a table and as a sheet', async () => {
    expect((await kitchen('trace', lot, '.')).said).toContain(lot);
    expect((await kitchen('trace', lot, '.', '--as', 'csv')).said).toContain('lot,day,where');
    expect((await kitchen('trace', lot, '.', '--as', 'html')).said).toContain('Where a lot went');
  });

  it('says so where no day knows the lot, or the folder is not said', async () => {
    expect((await kitchen('trace', '2026-01-01-9', '.')).complaints.join()).toContain('label');
    expect((await kitchen('trace', lot)).exit).toBe(2);
    const { complaints } = await kitchen('trace', lot, '.', '--out', 'no/where.txt');
    expect(complaints).toEqual([
      'no/where.txt cannot be written: its folder is not there. Name another place with --out.',
    ]);
  });
});
