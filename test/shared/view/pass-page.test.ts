import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BatchId, DishId, Instant, ServiceId } from '../../../shared/kernel/index.ts';
import { after, hours, instant, minutes } from '../../../shared/kernel/index.ts';
import type { PassDish, PassPan, PassService } from '../../../shared/view/index.ts';
import { passLine } from '../../../shared/view/index.ts';

const opensAt = instant(Date.UTC(2026, 10, 25, 18));
const min = (count: number): Instant => after(opensAt, minutes(count));
const service: PassService = {
  id: 'lunch' as ServiceId,
  name: { en: 'Lunch' },
  opensAt,
  closesAt: after(opensAt, hours(2)),
};

function pan(batch: string, portions: number, more: Partial<PassPan> = {}): PassPan {
  return {
    batch: batch as BatchId,
    name: { en: batch },
    service: service.id,
    pieces: 4,
    piece: { one: { en: 'piece' }, many: { en: 'pieces' } },
    portions,
    stage: 'ready',
    readyAt: opensAt,
    readyLowAt: opensAt,
    readyHighAt: opensAt,
    heldUntil: min(240),
    isEmptied: false,
    setOut: { en: 'Slice it' },
    barred: null,
    soldTill: null,
    ...more,
  };
}

/** Sells 8 portions in each of its eight quarters. */
function dish(pans: readonly PassPan[], more: Partial<PassDish> = {}): PassDish {
  return {
    dish: 'ribs' as DishId,
    name: { en: 'Ribs' },
    allergens: [],
    perQuarter: [8, 8, 8, 8, 8, 8, 8, 8],
    sold: 0,
    soldBefore: 0,
    soldOutAt: null,
    pans,
    ...more,
  };
}

const coming = (portions: number, readyAt: Instant) =>
  pan('next', portions, { stage: 'coming', heldUntil: null, readyAt });

describe('the portions of a dish', () => {
  it('are those cut, and behind them those held whole', () => {
    const line = passLine(dish([pan('a', 20), pan('b', 30, { stage: 'held' })]), service, opensAt);
    expect([line.ready, line.held]).toEqual([20, 30]);
  });

  it('are sold from what may be held the shortest', () => {
    const pans = [pan('late', 20), pan('soon', 10, { heldUntil: min(30) })];
    const line = passLine(dish(pans, { sold: 12 }), service, opensAt);
    expect(line.pans.map(({ pan: { batch }, left }) => [batch, left])).toEqual([['late', 18]]);
  });

  it('of an emptied pan are gone, whatever was counted', () => {
    const pans = [pan('a', 20, { isEmptied: true }), pan('b', 10)];
    expect(passLine(dish(pans, { sold: 3 }), service, opensAt).ready).toBe(10);
    expect(passLine(dish(pans, { sold: 24 }), service, opensAt).ready).toBe(6);
  });

  it('are not taken from a pan that is sold from no more, but for those counted before', () => {
    const old = pan('old', 20, { barred: { why: 'missed', check: 'discard-time' }, soldTill: 9 });
    const line = passLine(
      dish([old, pan('new', 30)], { soldBefore: 9, sold: 5 }),
      service,
      opensAt,
    );
    expect(line.ready).toBe(25);
    expect(line.pans.map(({ left }) => left).sort()).toEqual([11, 25]);
    const thrown = { ...old, isEmptied: true };
    expect(passLine(dish([thrown, pan('new', 30)], { sold: 14 }), service, opensAt).ready).toBe(25);
  });

  it('of what was thrown out were sold in its turn, after what had to go before it', () => {
    const thrown = pan('b', 16, { heldUntil: min(60), soldTill: 26, isEmptied: true });
    const pans = [pan('a', 14, { heldUntil: min(30) }), thrown, pan('c', 25)];
    const line = passLine(dish(pans, { sold: 28 }), service, min(70));
    expect(line.pans.map(({ pan: { batch }, left }) => [batch, left])).toEqual([['c', 23]]);
  });

  it('never fall below nought and never add to what was made', () => {
    const amount = fc.integer({ min: 0, max: 60 });
    fc.assert(
      fc.property(amount, amount, amount, amount, (a, b, sold, soldBefore) => {
        const line = passLine(
          dish([pan('a', a), pan('b', b, { stage: 'held' })], { sold, soldBefore }),
          service,
          opensAt,
        );
        expect(line.ready + line.held).toBe(Math.max(0, a + b - sold - soldBefore));
      }),
    );
  });
});

describe('a dish of which nothing stands there', () => {
  const emptyOf = (...pans: readonly PassPan[]) =>
    passLine(dish(pans, { sold: 8 }), service, min(10)).empty;

  it('has not had its first batch, waits for the next, or has had its last', () => {
    expect(emptyOf(coming(20, min(40)))).toBe('before');
    expect(emptyOf(pan('a', 8), coming(20, min(40)))).toBe('between');
    expect(emptyOf(pan('a', 8))).toBe('after');
  });

  it('is none of this while one portion is left, cut or whole', () => {
    expect(emptyOf(pan('a', 9), coming(20, min(40)))).toBeNull();
    expect(emptyOf(pan('a', 8), pan('b', 1, { stage: 'held' }))).toBeNull();
  });
});

describe('what runs out', () => {
  const outAt = (pans: readonly PassPan[], now = opensAt, more: Partial<PassDish> = {}) =>
    passLine(dish(pans, more), service, now).runsOut;

  it('is nothing where all that the curve asks is there', () => {
    expect(outAt([pan('a', 64)])).toBeNull();
  });

  // By hand: 32 portions at 8 a quarter last four quarters; the other four ask for 32 more.
  it('is said with its time and what is then missing', () => {
    expect(outAt([pan('a', 32)])).toEqual({ at: min(60), missing: 32 });
  });

  it('is put off by what lands in time, and not by what lands later', () => {
    expect(outAt([pan('a', 32), coming(32, min(59))])).toBeNull();
    expect(outAt([pan('a', 32), coming(32, min(90))])).toEqual({ at: min(60), missing: 16 });
  });

  it('counts no portion past the time that it may be held', () => {
    expect(outAt([pan('a', 64, { heldUntil: min(30) })])).toEqual({ at: min(30), missing: 48 });
  });

  it('comes sooner where more is sold than the curve asks', () => {
    const at = min(60);
    const asPlanned = outAt([pan('a', 56)], at, { sold: 32 });
    const faster = outAt([pan('a', 80)], at, { sold: 56 });
    expect(asPlanned?.at).toBe(min(105));
    expect(faster?.at).toBeLessThan(min(105));
  });

  it('is not asked of a dish that is called sold out', () => {
    expect(outAt([pan('a', 1)], opensAt, { soldOutAt: opensAt })).toBeNull();
  });
});
