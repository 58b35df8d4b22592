import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { WetGlass } from '../../../client/hands/wet-glass.ts';

/** As on a wall of 43 inches: a place of 22 mm. */
const FINGER_PX = 60;
const glass = () => new WetGlass(() => FINGER_PX);

type Tap = { id: number; xPx: number; yPx: number; atMs: number; quick?: boolean };

/** A finger comes down and up at one place, and the browser makes a tap of it. */
function tapOn(wall: WetGlass, tap: Tap, more: { wentPx?: number; acrossPx?: number } = {}) {
  wall.down({ ...tap, ...(more.acrossPx && { acrossPx: more.acrossPx }) });
  if (more.wentPx) wall.move({ ...tap, xPx: tap.xPx + more.wentPx });
  wall.up(tap.id, tap.atMs + 50);
  return wall.hears({ ...tap, atMs: tap.atMs + 50 });
}

const ring = { id: 1, xPx: 1800, yPx: 300 };
const late = { id: 2, xPx: 1700, yPx: 500 };

describe('a wet glass', () => {
  it('hears a finger that comes down and up in one place', () => {
    expect(tapOn(glass(), { ...ring, atMs: 0 })).toBe(true);
  });

  it('hears the second of two taps at one place only when it is meant', () => {
    const wall = glass();
    expect(tapOn(wall, { ...ring, atMs: 0 })).toBe(true);
    expect(tapOn(wall, { ...ring, id: 2, atMs: 300 })).toBe(false);
    expect(tapOn(wall, { ...ring, id: 3, atMs: 1100 })).toBe(true);
  });

  it('hears every stroke that is counted as fast as a finger goes', () => {
    const wall = glass();
    const heard = [0, 160, 320, 480, 640, 800, 960].map((atMs, id) =>
      tapOn(wall, { ...ring, id, atMs, quick: true }),
    );
    expect(heard).toEqual(heard.map(() => true));
  });

  it('hears the digits of a number, one key after the other', () => {
    const wall = glass();
    const heard = [0, 150, 300, 450].map((atMs, id) =>
      tapOn(wall, { id, xPx: 300 + id * 70, yPx: 900, atMs, quick: true }),
    );
    expect(heard).toEqual([true, true, true, true]);
  });

  it('counts no piece where a cloth comes over the tally', () => {
    const wall = glass();
    tapOn(wall, { ...late, atMs: 0 }, { wentPx: 300 });
    expect(tapOn(wall, { ...ring, atMs: 200, quick: true })).toBe(false);
  });

  it('hears no stroke twice that a drop of water makes of one', () => {
    const wall = glass();
    expect(tapOn(wall, { ...ring, atMs: 0, quick: true })).toBe(true);
    expect(tapOn(wall, { ...ring, id: 2, atMs: 30, quick: true })).toBe(false);
  });

  it('hears late and then how late, as fast as a hand goes from one to the other', () => {
    const wall = glass();
    expect(tapOn(wall, { ...late, atMs: 0 })).toBe(true);
    expect(tapOn(wall, { ...late, id: 3, xPx: 900, atMs: 400 })).toBe(true);
  });

  it('hears neither of two fingers', () => {
    const wall = glass();
    wall.down({ ...ring, atMs: 0 });
    wall.down({ ...late, atMs: 20 });
    wall.up(1, 80);
    wall.up(2, 90);
    expect(wall.hears({ ...ring, atMs: 80 })).toBe(false);
    expect(wall.hears({ ...late, atMs: 90 })).toBe(false);
    expect(tapOn(wall, { ...ring, id: 3, atMs: 1000 })).toBe(true);
  });

  it('does not wait for ever for a finger whose end it was never told', () => {
    const wall = glass();
    wall.down({ ...late, atMs: 0 });
    expect(tapOn(wall, { ...ring, atMs: 4000 })).toBe(true);
  });

  it('hears no finger that went further than a place to tap, nor a palm', () => {
    expect(tapOn(glass(), { ...ring, atMs: 0 }, { wentPx: 90 })).toBe(false);
    expect(tapOn(glass(), { ...ring, atMs: 0 }, { acrossPx: 200 })).toBe(false);
    expect(tapOn(glass(), { ...ring, atMs: 0 }, { wentPx: 20, acrossPx: 70 })).toBe(true);
  });

  it('hears nothing after two long strokes of a cloth, till it was left alone', () => {
    const wall = glass();
    tapOn(wall, { ...ring, atMs: 0 }, { wentPx: 500 });
    tapOn(wall, { ...ring, id: 2, yPx: 400, atMs: 300 }, { wentPx: -600 });
    expect(tapOn(wall, { ...ring, id: 3, atMs: 700 })).toBe(false);
    expect(tapOn(wall, { ...ring, id: 4, atMs: 2400 })).toBe(true);
  });

  it('takes a page that is scrolled with the finger for no wipe', () => {
    const wall = glass();
    for (const id of [1, 2, 3]) {
      wall.down({ ...ring, id, atMs: id * 200 });
      wall.move({ id, xPx: ring.xPx, yPx: ring.yPx + 400 });
      wall.up(id, id * 200 + 100, true);
    }
    expect(tapOn(wall, { ...ring, id: 4, atMs: 1100 })).toBe(true);
  });

  it('hears nothing while somebody says that they wipe it, and everything after', () => {
    const wall = glass();
    wall.restTill(20_000);
    expect(tapOn(wall, { ...ring, atMs: 19_000 })).toBe(false);
    expect(tapOn(wall, { ...late, atMs: 21_000 })).toBe(true);
  });

  it('hears one tap at most in the time of a double tap, whatever touches it and where', () => {
    const touch = fc.record({
      xPx: fc.integer({ min: 0, max: 1920 }),
      yPx: fc.integer({ min: 0, max: 1080 }),
      gapMs: fc.integer({ min: 5, max: 200 }),
      wentPx: fc.integer({ min: 0, max: 800 }),
    });
    fc.assert(
      fc.property(fc.array(touch, { minLength: 2, maxLength: 60 }), (touches) => {
        const wall = glass();
        const heardMs: number[] = [];
        let atMs = 0;
        touches.forEach(({ xPx, yPx, gapMs, wentPx }, id) => {
          atMs += gapMs;
          if (tapOn(wall, { id, xPx, yPx, atMs }, { wentPx })) heardMs.push(atMs);
        });
        return heardMs.every((ms, n) => n === 0 || ms - (heardMs[n - 1] ?? 0) >= 700);
      }),
    );
  });
});
