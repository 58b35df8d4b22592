import { describe, expect, it } from 'vitest';
import { assumedScale, scaleOf, touchPx, writtenLarger } from '../../../client/theme/index.ts';

const wall = { widthPx: 1920, heightPx: 1080 };
const phone = { widthPx: 390, heightPx: 844 };

describe('the scale of a screen', () => {
  it('that nobody measured is that of a 43-inch wall read from 3 m', () => {
    const measured = scaleOf({ diagonalIn: 43, distanceM: 3 }, wall);
    expect(assumedScale(wall).arcminPx).toBeCloseTo(measured.arcminPx, 6);
  });

  it('does not change when a browser shows its bars', () => {
    const withBars = { ...wall, heightPx: 940 };
    expect(assumedScale(withBars)).toEqual(assumedScale(wall));
  });

  it('is that of a thing in the hand on a phone held upright', () => {
    const smallestPx = (16 / 0.672) * assumedScale(phone).arcminPx;
    expect(smallestPx).toBeGreaterThan(14);
    expect(smallestPx).toBeLessThan(20);
  });

  it('doubles its letters at twice the distance', () => {
    const near = scaleOf({ diagonalIn: 43, distanceM: 2 }, wall);
    const far = scaleOf({ diagonalIn: 43, distanceM: 4 }, wall);
    expect(far.arcminPx / near.arcminPx).toBeCloseTo(2, 6);
  });
});

describe('a reader who has set their browser to larger letters', () => {
  it('has them so much larger on every screen, and fingers as they were', () => {
    const measured = scaleOf({ diagonalIn: 43, distanceM: 3 }, wall);
    const doubled = writtenLarger(measured, 2);
    expect(doubled.arcminPx / measured.arcminPx).toBeCloseTo(2, 6);
    expect(touchPx(doubled, wall)).toBe(touchPx(measured, wall));
  });

  it('never has them smaller than can be read from where they stand', () => {
    const measured = scaleOf({ diagonalIn: 43, distanceM: 3 }, wall);
    expect(writtenLarger(measured, 0.5)).toEqual(measured);
  });
});

describe('a place to tap', () => {
  it('is 22 mm on a measured panel', () => {
    const tablet = { widthPx: 1280, heightPx: 800 };
    const scale = scaleOf({ diagonalIn: 10.1, distanceM: 1 }, tablet);
    expect(touchPx(scale, tablet) / scale.mmPx).toBeCloseTo(22, 3);
  });

  it('is never less than 60 px, however large the panel', () => {
    expect(touchPx(scaleOf({ diagonalIn: 85, distanceM: 5 }, wall), wall)).toBe(60);
  });

  it('is a sixth of a phone at most', () => {
    expect(touchPx(assumedScale(phone), phone)).toBe(390 / 6);
  });
});
