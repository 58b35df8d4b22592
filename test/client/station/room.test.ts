import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isNarrow, linesOf, roomOf, wallUnder } from '../../../client/station/room.ts';
import { assumedScale, scaleOf, touchPx } from '../../../client/theme/index.ts';

function seen(widthPx: number, heightPx: number, scale = assumedScale({ widthPx, heightPx })) {
  const glass = { widthPx, heightPx };
  return { ...glass, arcminPx: scale.arcminPx, touchPx: touchPx(scale, glass) };
}

describe('the room on a station wall', () => {
  it('is three lines and the rows after them on a wall of 1920 by 1080', () => {
    const wall = seen(1920, 1080);
    expect(linesOf(wall)).toBe(3);
    expect(roomOf(wall, 2)).toMatchObject({ next: 3, further: 2 });
  });

  it('is still three lines on 1024 by 600, with fewer rows after them', () => {
    const wall = seen(1024, 600);
    expect(linesOf(wall)).toBe(3);
    expect(roomOf(wall, 3).next).toBeLessThan(roomOf(wall, 1).next);
  });

  it('is one line where the letters must be read from five metres', () => {
    const scale = scaleOf({ diagonalIn: 43, distanceM: 5 }, { widthPx: 1920, heightPx: 1080 });
    const wall = seen(1920, 1080, scale);
    expect([linesOf(wall), isNarrow(wall)]).toEqual([1, false]);
  });

  it('is less while news or a question stand over it, and the same under the head alone', () => {
    const wall = seen(1024, 600);
    const headPx = 54 * wall.arcminPx;
    expect(linesOf(wallUnder(wall, headPx))).toBe(linesOf(wall));
    expect(linesOf(wallUnder(wall, headPx + 150))).toBeLessThan(linesOf(wall));
    expect(wallUnder(wall, 0)).toEqual(wall);
  });

  it('grows downwards on a phone', () => {
    const phone = seen(390, 844);
    expect([isNarrow(phone), roomOf(phone, 1).next]).toEqual([true, 6]);
  });

  it('always holds a line, and never promises more height than there is', () => {
    const size = fc.tuple(fc.integer({ min: 320, max: 3840 }), fc.integer({ min: 480, max: 2160 }));
    fc.assert(
      fc.property(size, ([width, height]) => {
        const wall = seen(width, height);
        const lines = linesOf(wall);
        const { next } = roomOf(wall, lines);
        expect(lines).toBeGreaterThanOrEqual(1);
        if (!isNarrow(wall)) expect(next * wall.touchPx).toBeLessThan(wall.heightPx);
      }),
    );
  });
});
