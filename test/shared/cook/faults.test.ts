import { describe, expect, it } from 'vitest';
import {
  type Fault,
  forecast,
  type Piece,
  type Reading,
  type Smoker,
} from '../../../shared/cook/index.ts';
import { celsius, hours, metres, seconds } from '../../../shared/kernel/index.ts';
import { at, hourly, shoulder, smoker } from './shoulder.ts';

function faultsOf(change: {
  piece?: Partial<Piece>;
  smoker?: Partial<Smoker>;
  readings?: readonly Reading[];
}): readonly Fault[] {
  const { piece, smoker: other, readings = [] } = change;
  const found = forecast({ ...shoulder, ...piece }, { ...smoker, ...other }, readings, at(6));
  return found.ok ? [] : found.faults;
}

const composed = (water: number, protein: number, fat: number, ash = 0.01): Partial<Piece> => ({
  cut: { ...shoulder.cut, composition: { water, protein, fat, ash } },
});

describe('what cannot be is named, and nothing is computed', () => {
  it.each([0, -0.1, Number.NaN, Number.POSITIVE_INFINITY, 25])('a thickness of %d m', (sizeM) => {
    const sides = { ...shoulder.sides, thicknessM: metres(sizeM) };
    expect(faultsOf({ piece: { sides } })).toEqual([
      { rule: 'impossible-size', side: 'thickness', sizeM },
    ]);
  });

  it('meat whose parts do not sum to the whole', () => {
    expect(faultsOf({ piece: composed(0.64, 0.17, 0.12) })).toEqual([
      { rule: 'composition-does-not-sum', sum: expect.closeTo(0.94, 9) },
    ]);
  });

  it('but food tables may round', () => {
    expect(faultsOf({ piece: composed(0.66, 0.186, 0.15) })).toEqual([]);
  });

  it('a part of meat below nothing, even where the sum is right', () => {
    expect(faultsOf({ piece: composed(0.64, -0.1, 0.45) })).toEqual([
      { rule: 'impossible-share', part: 'protein', share: -0.1 },
    ]);
  });

  it('a frozen piece, of whose ice the model knows nothing', () => {
    expect(faultsOf({ piece: { startC: celsius(-8) } })).toEqual([
      { rule: 'impossible-start', tempC: -8 },
    ]);
  });

  it('a target that is as hot as the fire', () => {
    expect(faultsOf({ smoker: { setC: celsius(96) } })).toEqual([
      { rule: 'target-above-fire', target: 'done', tempC: 96, hottestC: 96 },
    ]);
  });

  it('but not one that was shown before the fire was let down', () => {
    const readings = hourly(40, 70, 90, 97);
    expect(faultsOf({ smoker: { setC: celsius(80) }, readings })).toEqual([]);
  });

  it('nor one that a hotter smoker waits for', () => {
    const hot = { ...smoker, id: 'hot', setC: celsius(130) };
    const moved = {
      from: { by: 'time' as const, atS: hours(8) },
      place: { kind: 'smoker' as const, smoker: hot },
      wrap: 'none' as const,
    };
    const piece = { stays: [...shoulder.stays, moved] };
    expect(faultsOf({ piece, smoker: { setC: celsius(90) } })).toEqual([]);
  });

  it('a reading before the piece went in, or after now', () => {
    const early: Reading = { atS: seconds(-60), tempC: celsius(5), by: 'hand' };
    const late: Reading = { atS: hours(7), tempC: celsius(70), by: 'hand' };
    expect(faultsOf({ readings: [early, ...hourly(30), late] })).toEqual([
      { rule: 'reading-before-start', atS: -60 },
      { rule: 'reading-after-now', atS: hours(7) },
    ]);
  });

  it('a core that is hotter than its water boils', () => {
    const readings = hourly(30, 55, 180);
    expect(faultsOf({ readings })).toEqual([
      { rule: 'impossible-reading', atS: hours(3), tempC: 180 },
    ]);
  });

  it('a piece that is nowhere at the beginning', () => {
    const [first] = shoulder.stays;
    if (first === undefined) throw new Error('a stay');
    const late = { ...first, from: { by: 'time' as const, atS: hours(1) } };
    expect(faultsOf({ piece: { stays: [late] } })).toEqual([{ rule: 'no-first-stay' }]);
  });

  it('stays and logs that run backwards', () => {
    const [first] = shoulder.stays;
    if (first === undefined) throw new Error('a stay');
    const stays = [4, 3].map((hour) => ({
      ...first,
      from: { by: 'time' as const, atS: hours(hour) },
    }));
    const log = [2, 1].map((hour) => ({ atS: hours(hour), tempC: celsius(110) }));
    expect(faultsOf({ piece: { stays: [first, ...stays] }, smoker: { log } })).toEqual([
      { rule: 'stays-out-of-order', index: 2 },
      { rule: 'log-out-of-order', atS: hours(1) },
    ]);
  });

  it('air that no smoker has', () => {
    const log = [{ atS: 600, tempC: 900 }];
    expect(faultsOf({ smoker: { log } })).toEqual([{ rule: 'impossible-air', tempC: 900 }]);
  });

  it('all of it at once', () => {
    const sides = { ...shoulder.sides, widthM: metres(0) };
    const found = faultsOf({
      piece: { sides, startC: celsius(-8) },
      smoker: { setC: celsius(80) },
    });
    expect(found.map(({ rule }) => rule)).toEqual([
      'impossible-size',
      'impossible-start',
      'target-above-fire',
    ]);
  });
});
