import { describe, expect, it } from 'vitest';
import { hasThen } from '../../../client/smoker/pit-room.ts';
import { assumedScale, touchPx } from '../../../client/theme/index.ts';

function seen(widthPx: number, heightPx: number) {
  const glass = { widthPx, heightPx };
  const scale = assumedScale(glass);
  return { ...glass, arcminPx: scale.arcminPx, touchPx: touchPx(scale, glass) };
}

describe('the room on the wall of the pit', () => {
  it('lists what comes then where every rack can be told besides', () => {
    expect(hasThen(seen(1920, 1080), 4)).toBe(true);
    expect(hasThen(seen(3840, 2160), 5)).toBe(true);
    expect(hasThen(seen(1024, 600), 2)).toBe(true);
  });

  it('is for the racks where there are many of them, or the wall is low', () => {
    expect(hasThen(seen(1920, 1080), 9)).toBe(false);
    expect(hasThen(seen(1024, 600), 5)).toBe(false);
  });
});
