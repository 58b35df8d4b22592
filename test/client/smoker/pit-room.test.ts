import { describe, expect, it } from 'vitest';
import { hasThen, highAs } from '../../../client/smoker/pit-room.ts';
import { assumedScale, touchPx } from '../../../client/theme/index.ts';
import { must } from '../../../shared/kernel/index.ts';
import type { LoadDrawing } from '../../../shared/view/index.ts';
import { NOW, smokerView } from '../fixtures.ts';

const say = { language: 'en', ...smokerView } as const;

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

  it('counts a free rack for less and one of two kinds for more', () => {
    const [smoker] = smokerView.smokers;
    const rack = must(smoker?.racks[0], 'a rack');
    const load = must(rack.loads[0], 'a load');
    const other = { ...load, piece: { one: { en: 'point' }, many: { en: 'points' } } };
    const high = (...loads: LoadDrawing[]) =>
      highAs({ ...must(smoker, 'a smoker'), racks: [{ ...rack, loads }] }, NOW, say);
    expect(high()).toBeLessThan(high({ ...load, here: false }));
    expect(high({ ...load, here: false })).toBeLessThan(high(load));
    expect(high(load, load)).toBe(high(load));
    expect(high(load, other)).toBeGreaterThan(high(load));
  });
});
