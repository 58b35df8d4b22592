import { describe, expect, it } from 'vitest';
import {
  columnsOf,
  hasReady,
  isNarrow,
  linesOf,
  nameWidth,
  pansRows,
} from '../../../client/pass/room.ts';
import { assumedScale, scaleOf, touchPx } from '../../../client/theme/index.ts';

function seen(widthPx: number, heightPx: number, scale = assumedScale({ widthPx, heightPx })) {
  const glass = { widthPx, heightPx };
  return { ...glass, arcminPx: scale.arcminPx, touchPx: touchPx(scale, glass) };
}

describe('the room on the wall of the pass', () => {
  it.each([
    [1920, 1080],
    [1024, 600],
    [3840, 2160],
  ])('of %i by %i is one column for a lunch, and two that hold a dinner of 13', (width, height) => {
    const wall = seen(width, height);
    expect(columnsOf(wall, 7)).toBe(1);
    expect(columnsOf(wall, 13)).toBe(2);
    expect(2 * linesOf(wall)).toBeGreaterThanOrEqual(13);
  });

  it('is less for a name beside a figure of three digits, or a longer word to undo', () => {
    const wall = seen(1920, 1080);
    const words = { ready: 'ready', undo: 'undo' };
    const wide = nameWidth(wall, 2, 20, words);
    expect(nameWidth(wall, 2, 120, words)).toBeLessThan(wide);
    expect(nameWidth(wall, 2, 20, { ...words, undo: 'uundoo' })).toBeLessThan(wide);
  });

  it('is less for a name where a finger asks for wider boxes than the words in them', () => {
    const glass = { widthPx: 1024, heightPx: 600 };
    const shelf = seen(1024, 600, scaleOf({ diagonalIn: 10, distanceM: 0.7 }, glass));
    const words = { ready: 'ready', undo: 'undo' };
    const bare = nameWidth({ ...shelf, touchPx: 0 }, 2, 20, words);
    const boxes = (2 * shelf.touchPx) / shelf.arcminPx;
    expect(nameWidth(shelf, 2, 20, words)).toBeCloseTo(bare - (boxes - 63 - 51));
  });

  it('has no room under a figure for a word that is wider', () => {
    expect(hasReady({ ready: 'listas', undo: '' })).toBe(true);
    expect(hasReady({ ready: 'reeaady', undo: '' })).toBe(false);
  });

  it('has a second row for what is in the pans only where every line is seen nevertheless', () => {
    const tablet = seen(1024, 600);
    expect([3, 7].map((lines) => pansRows(tablet, lines))).toEqual([2, 1]);
  });

  it('is one long column on a phone', () => {
    const phone = seen(390, 844);
    expect([isNarrow(phone), columnsOf(phone, 13)]).toEqual([true, 1]);
  });

  it('is never more than two columns, in which letters would be cut off', () => {
    const far = scaleOf({ diagonalIn: 43, distanceM: 5 }, { widthPx: 1920, heightPx: 1080 });
    expect(columnsOf(seen(1920, 1080, far), 40)).toBeLessThanOrEqual(2);
  });
});
