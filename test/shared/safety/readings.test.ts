import { describe, expect, it } from 'vitest';
import { celsius, seconds } from '../../../shared/kernel/index.ts';
import type { Series } from '../../../shared/safety/index.ts';
import { coldestOf, warmestOf } from '../../../shared/safety/index.ts';

const probe = (...points: readonly (readonly [number, number])[]): Series =>
  points.map(([atS, tempC]) => ({ atS: seconds(atS), tempC: celsius(tempC) }));

describe('several probes in one piece', () => {
  it('show its coldest point, never a mean', () => {
    const readings = coldestOf([probe([0, 10], [10, 30]), probe([0, 20], [10, 20])]);
    expect(readings).toEqual(probe([0, 10], [10, 20]));
  });

  it('are compared at every moment that one of them read', () => {
    const readings = coldestOf([probe([0, 10], [10, 30]), probe([0, 40], [4, 0], [10, 40])]);
    expect(readings).toEqual(probe([0, 10], [4, 0], [10, 30]));
  });

  it('say nothing of a time at which one of them did not read', () => {
    const readings = coldestOf([probe([0, 10], [10, 10]), probe([4, 20], [20, 20])]);
    expect(readings.map(({ atS }) => atS)).toEqual([4, 10]);
  });

  it('show the warmest point where the piece is to cool', () => {
    expect(warmestOf([probe([0, 60], [10, 50]), probe([0, 55], [10, 52])])).toEqual(
      probe([0, 60], [10, 52]),
    );
  });

  it('are one where there is one', () => {
    expect(coldestOf([probe([0, 1])])).toEqual(probe([0, 1]));
  });
});
