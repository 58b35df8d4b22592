import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { portionsPerQuarter } from '../../../shared/plan/demand.ts';

const shapes = ['even', 'early', 'middle', 'late'] as const;

describe('the demand of a service', () => {
  it('adds up to the portions that were asked for, whatever its shape', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 2000 }),
        fc.integer({ min: 1, max: 60 }),
        fc.constantFrom(...shapes),
        (portions, quarters, shape) => {
          const demand = portionsPerQuarter({ by: 'shape', portions, shape }, quarters);
          expect(demand).toHaveLength(quarters);
          expect(demand.reduce((a, b) => a + b, 0)).toBe(portions);
          expect(demand.every((each) => Number.isInteger(each) && each >= 0)).toBe(true);
        },
      ),
    );
  });

  it('is heaviest where its shape says', () => {
    const of = (shape: (typeof shapes)[number]) =>
      portionsPerQuarter({ by: 'shape', portions: 160, shape }, 4);
    expect(of('even')).toEqual([40, 40, 40, 40]);
    expect(of('early')).toEqual([63, 48, 32, 17]);
    expect(of('late')).toEqual([18, 33, 47, 62]);
    expect(of('middle')).toEqual([25, 55, 55, 25]);
  });

  it('is as counted where it was counted, with nothing after', () => {
    expect(portionsPerQuarter({ by: 'quarter', portions: [3, 5] }, 4)).toEqual([3, 5, 0, 0]);
  });
});
