import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kilograms, must } from '../../../shared/kernel/index.ts';
import { piecesFor, portionsFrom, rawFor, weightsOf } from '../../../shared/plan/weights.ts';
import { filesWith } from './three-elms.ts';

const ribs = must(filesWith().catalogue.cuts[0], 'ribs');

describe('the chain of weights', () => {
  it('goes from the plate back to the cooler', () => {
    const whole = 0.7 * 0.68 * 0.98;
    expect(rawFor(ribs, kilograms(10))).toBeCloseTo(10 / whole, 9);
    expect(weightsOf(ribs, 4).servedKg).toBeCloseTo(4 * 4.2 * 0.45359237 * whole, 9);
  });

  it('pulls enough pieces for the portions, and not one more', () => {
    const portionKg = fc.double({ min: 0.05, max: 0.8, noNaN: true });
    fc.assert(
      fc.property(portionKg, fc.integer({ min: 1, max: 500 }), (portion, portions) => {
        const pieces = piecesFor(ribs, kilograms(portion), portions);
        expect(portionsFrom(ribs, kilograms(portion), pieces)).toBeGreaterThanOrEqual(portions);
        expect(portionsFrom(ribs, kilograms(portion), pieces - 1)).toBeLessThan(portions);
      }),
    );
  });
});
