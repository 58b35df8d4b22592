import { describe, expect, it } from 'vitest';
import { CAP_HEIGHT, LETTERS_ARCMIN, scaleOf } from '../../client/theme/index.ts';

/**
 * NUREG-0700 revision 2, §1.3.1-4: Height = 6.283 · D · MA / 21600 for a character that subtends MA
 * minutes of arc at distance D; text is 16 minutes or more, 20 to 22 preferred, and the size for
 * the farthest reader counts.
 */
const heightMm = (distanceM: number, minutes: number) =>
  (6.283 * distanceM * 1000 * minutes) / 21600;

const fullHd = { widthPx: 1920, heightPx: 1080 };

describe('letters on a measured wall', () => {
  it.each([
    [43, 3],
    [43, 5],
    [55, 3],
    [55, 5],
    [10.1, 1],
  ])('on %s inches read from %s m are as high as the guide asks', (diagonalIn, distanceM) => {
    const { arcminPx, mmPx } = scaleOf({ diagonalIn, distanceM }, fullHd);
    for (const minutes of Object.values(LETTERS_ARCMIN)) {
      const sizePx = (minutes / CAP_HEIGHT) * arcminPx;
      const capMm = (sizePx * CAP_HEIGHT) / mmPx;
      expect(capMm / heightMm(distanceM, minutes)).toBeCloseTo(1, 3);
    }
  });

  it('are never under 16 minutes of arc, and 20 or more where the floor must read them', () => {
    const { small, ...fromTheFloor } = LETTERS_ARCMIN;
    expect(small).toBeGreaterThanOrEqual(16);
    expect(Math.min(...Object.values(fromTheFloor))).toBeGreaterThanOrEqual(20);
  });
});
