import { describe, expect, it } from 'vitest';
import { celsius } from '../../../shared/kernel/index.ts';
import {
  celsiusCode,
  emptyCode,
  foodCode,
  type HeldTo,
  judgeColdHold,
  type LimitsChange,
  type Profile,
  profileAfter,
  profiles,
  type Row,
  readLimits,
  rowsOf,
  stepBetween,
} from '../../../shared/safety/index.ts';

const [coldHold] = rowsOf(foodCode, 'cold-hold');
if (coldHold === undefined) throw new Error('no cold-hold row');
const stricter: Row = { ...coldHold, limit: { atMost: '38 °F' }, source: 'our county' };

const change = (rows: readonly Row[], limits = 'food-code'): LimitsChange => ({
  limits,
  why: 'county letter',
  by: 'Marta',
  rows,
});
const held = (profile: Profile, changes: readonly LimitsChange[] = []): HeldTo => {
  const { id, version } = profileAfter(profile, changes);
  return { id, version, changes };
};
const asFile = (changes: readonly unknown[]) => JSON.parse(JSON.stringify({ changes }));

describe('a change of a limit', () => {
  it('makes the next version', () => {
    expect(profileAfter(foodCode, [change([stricter])]).version).toBe(2);
    expect(profileAfter(foodCode, [change([stricter]), change([coldHold])]).version).toBe(3);
  });

  it('leaves the days before it their old limits', () => {
    const changes = [change([stricter])];
    const judged = (made: readonly LimitsChange[]) =>
      judgeColdHold(profileAfter(foodCode, made), { coreC: celsius(4) }).ok;
    expect([judged(changes.slice(0, 0)), judged(changes)]).toEqual([true, false]);
    expect(profileAfter(foodCode, [])).toEqual(foodCode);
  });

  it('keeps the order of the rows, and puts a new one last', () => {
    const fish: Row = { ...coldHold, id: 'cold-hold-fish', limit: { atMost: '36 °F' } };
    const { rows } = profileAfter(foodCode, [change([fish, stricter])]);
    expect(rows.map(({ id }) => id)).toEqual([
      ...foodCode.rows.map(({ id }) => id),
      'cold-hold-fish',
    ]);
  });

  it('fills in an empty profile row by row', () => {
    const filled = profileAfter(emptyCode, [change([stricter], 'empty')]);
    expect(judgeColdHold(filled, { coreC: celsius(3) }).ok).toBe(true);
  });

  it('is none of another profile’s', () => {
    const { rows, version } = profileAfter(celsiusCode, [
      change([stricter]),
      change([], 'celsius'),
    ]);
    expect(rows).toEqual(celsiusCode.rows);
    expect(version).toBe(3);
  });
});

describe('the limits of one day after those of the last', () => {
  const one = [change([stricter])];

  it('may be as they were, and the first may be any', () => {
    expect(stepBetween(held(foodCode), held(foodCode))).toEqual({ ok: true, fresh: [] });
    expect(stepBetween(null, held(celsiusCode))).toEqual({ ok: true, fresh: [] });
    expect(stepBetween(held(foodCode, one), held(foodCode, one))).toEqual({ ok: true, fresh: [] });
  });

  it('are refused where they are others and nothing says why', () => {
    const refused = { ok: false, why: 'no-reason' };
    expect(stepBetween(held(foodCode), held(celsiusCode))).toEqual(refused);
    const delivered = { ...held(foodCode), version: 2 };
    expect(stepBetween(held(foodCode), delivered)).toEqual(refused);
  });

  it('are taken with every entry that is new', () => {
    const step = stepBetween(held(foodCode), held(foodCode, one));
    expect(step).toEqual({ ok: true, fresh: one });
    const back = [...one, change([], 'celsius')];
    expect(stepBetween(held(foodCode, one), held(celsiusCode, back))).toEqual({
      ok: true,
      fresh: back.slice(1),
    });
  });

  it('are refused where an entry that was kept is gone or is another', () => {
    const refused = { ok: false, why: 'rewritten' };
    expect(stepBetween(held(foodCode, one), held(foodCode))).toEqual(refused);
    const other = one.map((each) => ({ ...each, why: 'no letter' }));
    expect(stepBetween(held(foodCode, one), held(foodCode, other))).toEqual(refused);
  });

  it('are refused where the last entry leads to another profile than the kitchen names', () => {
    expect(stepBetween(held(foodCode), held(celsiusCode, one))).toEqual({
      ok: false,
      why: 'other-profile',
    });
  });
});

describe('a file of changes', () => {
  it.each(profiles)('is read back as it was written, with every row of $id', ({ id, rows }) => {
    const changes = [change(rows, id)];
    expect(readLimits(asFile(changes))).toEqual({ ok: true, value: changes });
  });

  it('is refused without a reason, without a name, and without a profile that there is', () => {
    const paths = (entry: object) => {
      const read = readLimits(asFile([{ ...change([]), ...entry }]));
      return read.ok ? [] : read.problems.map(({ path }) => path);
    };
    expect(paths({ why: '  ' })).toEqual(['changes[0].why']);
    expect(paths({ by: '' })).toEqual(['changes[0].by']);
    expect(paths({ limits: 'food-cod' })).toEqual(['changes[0].limits']);
    expect(paths({})).toEqual([]);
  });

  it('is told all that is wrong with its rows at once', () => {
    const [hotHold] = rowsOf(foodCode, 'hot-hold');
    const rows = [{ ...hotHold, limit: { atLeast: '135F' }, severity: 'maybe' }];
    const read = readLimits(asFile([{ ...change([]), rows }]));
    if (read.ok) throw new Error('it was taken');
    const found = read.problems.map((fault) => fault.found);
    expect(found).toEqual(expect.arrayContaining(['"135F"', '"maybe"']));
    expect(read.problems.every(({ path }) => path.startsWith('changes[0].rows['))).toBe(true);
  });

  it('may not name a rule that there is not, nor a row twice', () => {
    const [first] = foodCode.rows;
    expect(readLimits(asFile([{ ...change([]), rows: [{ ...first, rule: 'hot' }] }])).ok).toBe(
      false,
    );
    expect(readLimits(asFile([change([stricter, stricter])]))).toMatchObject({
      ok: false,
      problems: [{ path: 'changes[0].rows[1].id', found: '"cold-hold"' }],
    });
  });

  it('is refused where a row would become one of another rule', () => {
    const [hotHold] = rowsOf(foodCode, 'hot-hold');
    if (hotHold === undefined) throw new Error('no hot-hold row');
    expect(readLimits(asFile([change([{ ...hotHold, id: 'cold-hold' }])]))).toMatchObject({
      ok: false,
      problems: [{ path: 'changes[0].rows[0].rule', found: '"hot-hold"' }],
    });
  });
});
