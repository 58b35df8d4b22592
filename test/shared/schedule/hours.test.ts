import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bothOpen, mirroredHours, nextFit, outsideS } from '../../../shared/schedule/hours.ts';

const shift = Int32Array.of(100, 200, 230, 300, 900, 1_000);

describe('nextFit', () => {
  it('stays where the work fits', () => {
    expect(nextFit(shift, 150, 50, 60)).toBe(150);
  });

  it('waits for the shift to begin', () => {
    expect(nextFit(shift, 20, 50, 60)).toBe(100);
  });

  it('goes over a break, but not over the end of a shift', () => {
    expect(nextFit(shift, 160, 50, 60)).toBe(230);
    expect(nextFit(shift, 260, 50, 60)).toBe(260);
    expect(nextFit(shift, 260, 50, 1_000)).toBe(900);
  });

  it('stays where no span is long enough', () => {
    expect(nextFit(shift, 150, 500, 1_000)).toBe(150);
  });

  it('is never earlier for what comes later', () => {
    fc.assert(
      fc.property(
        fc.nat(1_200),
        fc.nat(200),
        fc.nat(150),
        fc.nat(1_000),
        (s, moreS, lengthS, gapS) => {
          const [first, later] = [
            nextFit(shift, s, lengthS, gapS),
            nextFit(shift, s + moreS, lengthS, gapS),
          ];
          expect(first).toBeGreaterThanOrEqual(s);
          expect(later).toBeGreaterThanOrEqual(first);
        },
      ),
    );
  });
});

describe('hours', () => {
  it('are common to two where both are open', () => {
    const both = bothOpen(shift, Int32Array.of(0, 120, 180, 250, 950, 2_000));
    expect([...both]).toEqual([100, 120, 180, 200, 230, 250, 950, 1_000]);
  });

  it('are the same again when they are mirrored twice', () => {
    expect(mirroredHours(mirroredHours(shift))).toEqual(shift);
    expect([...mirroredHours(Int32Array.of(10, 20))]).toEqual([-20, -10]);
  });

  it('measure what lies outside them', () => {
    expect(outsideS(shift, 120, 180)).toBe(0);
    expect(outsideS(shift, 270, 310)).toBe(10);
    expect(outsideS(shift, 500, 560)).toBe(60);
  });
});
