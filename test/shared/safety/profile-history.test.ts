import { describe, expect, it } from 'vitest';
import type { PersonId } from '../../../shared/kernel/index.ts';
import { celsius, instant } from '../../../shared/kernel/index.ts';
import type { ProfileHistory, Row } from '../../../shared/safety/index.ts';
import {
  changeProfile,
  emptyCode,
  foodCode,
  judgeColdHold,
  profileAt,
  rowsOf,
} from '../../../shared/safety/index.ts';

const delivered: ProfileHistory = { delivered: foodCode, changes: [] };
const by = 'marta' as PersonId;
const [coldHold] = rowsOf(foodCode, 'cold-hold');
if (coldHold === undefined) throw new Error('no cold-hold row');
const stricter: Row = { ...coldHold, limit: { atMost: '38 °F' }, source: 'our county' };

const change = (
  history: ProfileHistory,
  rows: readonly Row[],
  at: number,
  reason = 'county letter',
) => changeProfile(history, { changedRows: rows, reason, by, at: instant(at) });

describe('a change of a limit', () => {
  it('makes the next version, with who, when and why', () => {
    expect(change(delivered, [stricter], 1000)).toMatchObject({
      ok: true,
      version: { profile: 'food-code', version: 2, reason: 'county letter', by, at: 1000 },
    });
  });

  it('leaves the days before it their old limits', () => {
    const changed = change(delivered, [stricter], 1000);
    if (!changed.ok) throw new Error(changed.why);
    const judged = (at: number) =>
      judgeColdHold(profileAt(changed.history, instant(at)), { coreC: celsius(4) }).ok;
    expect([judged(999), judged(1000)]).toEqual([true, false]);
    expect(profileAt(changed.history, instant(999))).toEqual(foodCode);
  });

  it('keeps the order of the rows, and puts a new one last', () => {
    const fish: Row = { ...coldHold, id: 'cold-hold-fish', limit: { atMost: '36 °F' } };
    const changed = change(delivered, [fish, stricter], 1000);
    if (!changed.ok) throw new Error(changed.why);
    const { rows } = profileAt(changed.history, instant(1000));
    expect(rows.map(({ id }) => id)).toEqual([
      ...foodCode.rows.map(({ id }) => id),
      'cold-hold-fish',
    ]);
  });

  it('fills in an empty profile row by row', () => {
    const filled = change({ delivered: emptyCode, changes: [] }, [stricter], 5);
    if (!filled.ok) throw new Error(filled.why);
    const profile = profileAt(filled.history, instant(5));
    expect(judgeColdHold(profile, { coreC: celsius(3) }).ok).toBe(true);
  });

  it('is refused without a reason', () => {
    expect(change(delivered, [stricter], 1000, '  ')).toEqual({ ok: false, why: 'no-reason' });
  });

  it('is refused where nothing changes', () => {
    expect(change(delivered, [coldHold], 1000)).toEqual({ ok: false, why: 'nothing-changed' });
  });

  it('is refused before the last one, which would rewrite days that are over', () => {
    const changed = change(delivered, [stricter], 1000);
    if (!changed.ok) throw new Error(changed.why);
    expect(change(changed.history, [coldHold], 999)).toEqual({ ok: false, why: 'out-of-order' });
  });

  it('is refused where a row would become one of another rule', () => {
    const [hotHold] = rowsOf(foodCode, 'hot-hold');
    if (hotHold === undefined) throw new Error('no hot-hold row');
    expect(change(delivered, [{ ...hotHold, id: 'cold-hold' }], 1000)).toEqual({
      ok: false,
      why: 'other-rule',
    });
  });
});
