import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { celsius, metres, must, type SlotId } from '../../../shared/kernel/index.ts';
import {
  type Fit,
  holdsLoads,
  mostOn,
  piecesInRows,
  type RackFit,
  rackLoads,
  shareOf,
} from '../../../shared/plan/rack-fit.ts';
import { filesWith } from './three-elms.ts';

const laid = (lengthM: number, widthM: number) => ({
  lengthM: metres(lengthM),
  widthM: metres(widthM),
});
const rack = (lengthM: number, depthM: number) => ({
  lengthM: metres(lengthM),
  depthM: metres(depthM),
});

describe('pieces on a rack', () => {
  it('lie the way that most of them fit', () => {
    expect(piecesInRows(rack(1, 0.6), laid(0.5, 0.2))).toBe(6);
    expect(piecesInRows(rack(0.6, 1), laid(0.5, 0.2))).toBe(6);
  });

  it('fit exactly where they fit exactly', () => {
    expect(piecesInRows(rack(0.6, 0.3), laid(0.3, 0.1))).toBe(6);
    expect(piecesInRows(rack(0.29, 0.3), laid(0.3, 0.3))).toBe(0);
  });

  it('are no more than the rack can carry', () => {
    expect(mostOn(rackOf({ inRows: 6, holdsG: 5000, pieceG: 2000 }))).toBe(2);
  });
});

const rackOf = (changed: Partial<RackFit>): RackFit => ({
  slot: 'a/1' as SlotId,
  areaCm2: 1000,
  holdsG: 100_000,
  inRows: 6,
  pieceG: 1000,
  ...changed,
});
const { kitchen } = filesWith();
const fitOf = (inRows: readonly number[], holdsG = 100_000): Fit => ({
  smoker: must(kitchen.smokers[0], 'a smoker'),
  fireC: celsius(121),
  racks: inRows.map((count, index) =>
    rackOf({ slot: `a/${index + 1}` as SlotId, inRows: count, holdsG }),
  ),
});

describe('the loads of a batch', () => {
  it('are even, and each fits a rack of every smoker it could go to', () => {
    expect(rackLoads([fitOf([6, 6]), fitOf([9, 9])], 11)).toEqual([6, 5]);
  });

  it('take the area that keeps others out: a full rack is full', () => {
    expect(shareOf(rackOf({ inRows: 6 }), 6)).toEqual({ areaCm2: 1000, weightG: 6000 });
    expect(shareOf(rackOf({ inRows: 6 }), 3)).toEqual({ areaCm2: 500, weightG: 3000 });
    expect(shareOf(rackOf({ inRows: 6 }), 7)).toBeNull();
  });

  it('share a rack only if it bears them together, however much room there is', () => {
    const weak = fitOf([12], 7000);
    expect(holdsLoads(weak, [4, 3])).toBe(true);
    expect(holdsLoads(weak, [4, 4])).toBe(false);
  });

  it('share racks only as long as their pieces fit there together', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 12 }), { minLength: 1, maxLength: 5 }),
        fc.integer({ min: 1, max: 40 }),
        (most, pieces) => {
          const fit = fitOf(most);
          if (!holdsLoads(fit, rackLoads([fit], pieces))) return;
          expect(pieces).toBeLessThanOrEqual(most.reduce((a, b) => a + b, 0));
        },
      ),
    );
  });
});
