import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  exportText,
  fingerprintOf,
  type ReadArchive,
  readArchive,
  verifyExport,
} from '../../../server/record/index.ts';
import { must } from '../../../shared/kernel/index.ts';
import { dayAfter, firstDay, kitchenFolder, openKitchen, writeDays } from './kitchen-days.ts';

const folder = kitchenFolder();
let read: ReadArchive;
let text: string;

beforeAll(async () => {
  await writeDays(folder.path, 3);
  await (await openKitchen(folder.path)).close();
  read = await readArchive(folder.path);
  text = await exported(firstDay, dayAfter(1));
}, 60_000);
afterAll(async () => {
  await read.close();
  folder.remove();
});

const exported = (from: string, to: string) => {
  const { archive, log, signer } = read;
  return exportText(log, archive.stretch(archive.between(from, to)), must(signer, 'a key'), 0);
};

const lines = () => text.split('\n');
const changed = (at: (line: string) => boolean, change: (line: string) => string) =>
  lines()
    .map((line, i, all) => (at(line) && all.findIndex(at) === i ? change(line) : line))
    .join('\n');

describe('an exported record', () => {
  it('is one JSON document that holds by itself', () => {
    expect(JSON.parse(text).head).toMatchObject({ from: firstDay, to: dayAfter(1) });
    expect(verifyExport(text).faults).toEqual([]);
  });

  it('holds of a day in the middle, and of one that still runs', async () => {
    expect(verifyExport(await exported(dayAfter(1), dayAfter(1))).faults).toEqual([]);
    expect(verifyExport(await exported(dayAfter(1), dayAfter(2))).faults).toEqual([]);
  });

  it('is refused whichever byte of it is changed', () => {
    const bytes = Buffer.from(text, 'utf8');
    fc.assert(
      fc.property(fc.nat(bytes.length - 1), fc.integer({ min: 1, max: 255 }), (at, by) => {
        const other = Buffer.from(bytes);
        other[at] = ((other[at] ?? 0) + by) % 256;
        // Bytes that are no text would read as the same replacement sign.
        expect(verifyExport(other.toString('utf8')).faults).not.toEqual([]);
      }),
      { numRuns: 12 },
    );
  });

  it('is refused at the entry that was changed', () => {
    const other = changed(
      (line) => line.includes('lotCame') && line.startsWith('{"bytes"'),
      (line) => line.replace('Elm', 'Ash'),
    );
    const { seq } = JSON.parse(
      must(
        lines().find((line) => line.includes('lotCame') && line.startsWith('{"bytes"')),
        'a lot',
      ).replace(/,$/, ''),
    );
    expect(verifyExport(other).faults).toContainEqual(
      expect.objectContaining({ kind: 'entry', seq }),
    );
  });

  it('is refused where an entry is left out', () => {
    const other = lines()
      .filter((line) => !line.endsWith(',"seq":3},'))
      .join('\n');
    expect(verifyExport(other).faults).toContainEqual(
      expect.objectContaining({ kind: 'missing-entry', seq: 3 }),
    );
  });

  it('is refused where what is said of a day is not what was signed', () => {
    const other = changed(
      (line) => line.startsWith('{"day"'),
      (line) => line.replace('"pieces":', '"pieces":1'),
    );
    expect(verifyExport(other).faults).toContainEqual({ kind: 'day', day: firstDay });
  });

  it('is refused where a space was put in', () => {
    const other = text.replace('"seals":[', '"seals": [');
    expect(verifyExport(other).faults).toContainEqual(expect.objectContaining({ kind: 'line' }));
  });

  it('is refused with a key that is not the one on the sheet', () => {
    const own = fingerprintOf(JSON.parse(text).head.key);
    expect(verifyExport(text, own).faults).toEqual([]);
    expect(verifyExport(text, own.toUpperCase().replaceAll(' ', '')).faults).toEqual([]);
    const [fault] = verifyExport(text, 'ffff ffff ffff ffff ffff ffff').faults;
    expect(fault).toEqual({ kind: 'other-key', found: own });
  });

  it('is refused where a later day was written anew and signed as a whole by the hub', async () => {
    const { signer, log } = read;
    const days = read.archive.between(firstDay, dayAfter(1));
    const stretch = read.archive.stretch(days);
    const seals = stretch.seals.map((seal) =>
      seal.day === dayAfter(1) ? { ...seal, hash: 'f'.repeat(64) } : seal,
    );
    const other = await exportText(log, { ...stretch, seals }, must(signer, 'a key'), 0);
    expect(verifyExport(other).faults).toContainEqual(
      expect.objectContaining({ kind: 'seal', day: dayAfter(1) }),
    );
    const last = stretch.days.at(-1);
    const without = { ...stretch, days: [...stretch.days, must(last, 'a day')], seals: [] };
    const open = await exportText(log, without, must(signer, 'a key'), 0);
    expect(verifyExport(open).faults).toContainEqual({ kind: 'unsealed', day: firstDay });
  });

  it('is no record at all where it is something else', () => {
    expect(verifyExport('').faults[0]?.kind).toBe('not-a-record');
    expect(verifyExport('{"a":1}').faults[0]?.kind).toBe('not-a-record');
  });
});
