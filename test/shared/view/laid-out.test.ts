import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LoadDrawing } from '../../../shared/view/index.ts';
import { layOut } from '../../../shared/view/index.ts';
import { at, smokerView } from '../../client/fixtures.ts';

const [some] = smokerView.smokers.flatMap(({ racks }) => racks.flatMap(({ loads }) => loads));
if (!some) throw new Error('the fixture has no load');
const load = (more: Partial<LoadDrawing>): LoadDrawing => ({ ...some, ...more });
const rack = (...loads: LoadDrawing[]) => layOut({ lengthM: 1.2, depthM: 0.6, loads });

describe('a load on its rack', () => {
  it('has the whole length of the rack where it is alone, and rows of one length', () => {
    const [laid] = rack(load({ pieces: 3, pieceLengthM: 0.3, pieceWidthM: 0.22 }));
    expect(laid).toMatchObject({ fromM: 0, pieceLengthM: 0.3, perRow: 3, rows: 1 });
    const [five] = rack(load({ pieces: 5, pieceLengthM: 0.3, pieceWidthM: 0.22 }));
    expect(five).toMatchObject({ perRow: 3, rows: 2 });
  });

  it('is turned where only so it fits', () => {
    const [laid] = rack(load({ pieces: 10, pieceLengthM: 0.5, pieceWidthM: 0.12 }));
    expect(laid).toMatchObject({ pieceLengthM: 0.5, perRow: 2, rows: 5 });
    const [turned] = rack(load({ pieces: 8, pieceLengthM: 0.55, pieceWidthM: 0.15 }));
    expect(turned).toMatchObject({ perRow: 2, rows: 4 });
    const narrow = layOut({
      lengthM: 0.5,
      depthM: 1.2,
      loads: [load({ pieces: 4, pieceLengthM: 0.6, pieceWidthM: 0.2 })],
    });
    expect(narrow[0]).toMatchObject({ pieceLengthM: 0.2, perRow: 2, rows: 2 });
  });

  it('lies beside what is there at the same time, and in its place when that has gone', () => {
    const first = load({ pieces: 2, inAt: at(-60), outAt: at(60) });
    const beside = load({ pieces: 2, inAt: at(0), outAt: at(90) });
    const after = load({ pieces: 2, inAt: at(60), outAt: at(120) });
    const [, second, third] = rack(first, beside, after);
    expect(second?.fromM).toBeGreaterThan(0);
    expect(third?.fromM).toBeGreaterThanOrEqual(second?.fromM ?? 0);
    const alone = rack(first, after);
    expect(alone[1]?.fromM).toBe(0);
  });

  it('has a place for every piece', () => {
    const size = fc.double({ min: 0.1, max: 0.7, noNaN: true });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), size, size, (pieces, length, width) => {
        const [laid] = rack(load({ pieces, pieceLengthM: length, pieceWidthM: width }));
        expect((laid?.perRow ?? 0) * (laid?.rows ?? 0)).toBeGreaterThanOrEqual(pieces);
      }),
    );
  });
});
