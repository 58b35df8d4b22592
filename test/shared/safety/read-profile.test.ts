import { describe, expect, it } from 'vitest';
import { foodCode, profiles, readProfile } from '../../../shared/safety/index.ts';

const asFile = ({ id, name, rows }: (typeof profiles)[number]) => ({ id, name, rows });
const file = JSON.parse(JSON.stringify(asFile(foodCode)));

describe('a profile of one’s own', () => {
  it.each(profiles)('is read back as it was written: $id', (profile) => {
    expect(readProfile(JSON.parse(JSON.stringify(asFile(profile))))).toEqual({
      ok: true,
      value: profile,
    });
  });

  it('is told all that is wrong with it at once', () => {
    const rows = file.rows.map((row: { id: string }) =>
      row.id === 'hot-hold' ? { ...row, limit: { atLeast: '135F' }, severity: 'maybe' } : row,
    );
    const read = readProfile({ ...file, rows: [...rows, rows[0]] });
    expect(read.ok).toBe(false);
    if (read.ok) return;
    const found = read.problems.map((fault) => fault.found);
    expect(found).toEqual(expect.arrayContaining(['"135F"', '"maybe"', '"end-intact"']));
    expect(read.problems.every(({ path }) => path.startsWith('rows['))).toBe(true);
  });

  it('may not name a rule that there is not', () => {
    const read = readProfile({ ...file, rows: [{ ...file.rows[0], rule: 'hot-holding' }] });
    expect(read.ok).toBe(false);
  });
});
