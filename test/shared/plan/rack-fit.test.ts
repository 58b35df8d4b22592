import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kilograms, metres, must, type SlotId } from '../../../shared/kernel/index.ts';
import {
  type Fit,
  holdsLoads,
  loadOn,
  piecesOnRack,
  rackLoads,
} from '../../../shared/plan/rack-fit.ts';
import { filesWith } from './three-elms.ts';

const cut = (lengthM: number, widthM: number) => ({
  footprint: { lengthM: metres(lengthM), widthM: metres(widthM) },
});
const rack = (lengthM: number, depthM: number, holdsKg: number) => ({
  lengthM: metres(lengthM),
  depthM: metres(depthM),
  holdsKg: kilograms(holdsKg),
});

describe('pieces on a rack', () => {
  it('lie the way that most of them fit', () => {
    expect(piecesOnRack(rack(1, 0.6, 99), cut(0.5, 0.2), kilograms(1))).toBe(6);
    expect(piecesOnRack(rack(0.6, 1, 99), cut(0.5, 0.2), kilograms(1))).toBe(6);
  });

  it('are no more than the rack can carry', () => {
    expect(piecesOnRack(rack(1, 0.6, 5), cut(0.5, 0.2), kilograms(2))).toBe(2);
  });

  it('fit exactly where they fit exactly', () => {
    expect(piecesOnRack(rack(0.6, 0.3, 99), cut(0.3, 0.1), kilograms(1))).toBe(6);
    expect(piecesOnRack(rack(0.29, 0.3, 99), cut(0.3, 0.3), kilograms(1))).toBe(0);
  });
});

const { kitchen } = filesWith();
const fitOf = (most: readonly number[]): Fit => ({
  smoker: must(kitchen.smokers[0], 'a smoker'),
  racks: most.map((count, index) => ({
    slot: `a/${index + 1}` as SlotId,
    areaCm2: 1000,
    most: count,
  })),
});

describe('the loads of a batch', () => {
  it('are even, and each fits a rack of every smoker it could go to', () => {
    expect(rackLoads([fitOf([6, 6]), fitOf([9, 9])], 11)).toEqual([6, 5]);
  });

  it('take the area that keeps others out: a full rack is full', () => {
    expect(loadOn(fitOf([6]), 6).areaCm2).toBe(1000);
    expect(loadOn(fitOf([6]), 3).areaCm2).toBe(500);
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
