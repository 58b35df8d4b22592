import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hours, instant, resolveLocal, wallTime } from '../../../shared/kernel/index.ts';
import {
  holdsWindow,
  panned,
  placeIn,
  ruleOf,
  ruleStepMin,
  showing,
  widened,
  windowAt,
  zoomed,
} from '../../../shared/view/index.ts';

const from = resolveLocal('2026-03-06', '13:00', 'America/Denver').at;
const day = { from, to: instant(from + hours(32) * 1000) };
const now = instant(from + hours(10) * 1000);
const length = ({ from: a, to: b }: typeof day) => b - a;

describe('the window of a chart', () => {
  it('follows the clock with most of it still to come', () => {
    expect(placeIn(windowAt(now, day), now)).toBeCloseTo(0.2, 6);
  });

  it('has room at both sides where it is to be moved, and holds all that it held', () => {
    const window = windowAt(now, day);
    const wide = widened(window, 0.5);
    expect(length(wide)).toBe(2 * length(window));
    expect(placeIn(wide, now)).toBeCloseTo(0.25 + 0.2 / 2, 6);
    expect(holdsWindow(wide, window)).toBe(true);
    expect(holdsWindow(wide, panned(window, 0.4, day))).toBe(true);
    expect(holdsWindow(wide, panned(window, 0.6, day))).toBe(false);
    expect(holdsWindow(window, wide)).toBe(false);
  });

  it('keeps what is under the fingers where it is when it is brought nearer', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.3, max: 1, noNaN: true }), (factor) => {
        const window = windowAt(now, day);
        expect(placeIn(zoomed(window, factor, 0.2, day), now)).toBeCloseTo(0.2, 3);
      }),
    );
  });

  it('stays on the day, and moving does not change its length', () => {
    fc.assert(
      fc.property(fc.double({ min: -9, max: 9, noNaN: true }), (by) => {
        const window = windowAt(now, day);
        const moved = panned(window, by, day);
        expect(Math.abs(length(moved) - length(window))).toBeLessThanOrEqual(1);
        expect(moved.from).toBeGreaterThanOrEqual(day.from - hours(1) * 1000);
        expect(moved.to).toBeLessThanOrEqual(day.to + hours(1) * 1000 + 1);
      }),
    );
  });

  it('is never shorter than a task nor longer than the day', () => {
    const window = windowAt(now, day);
    expect(length(zoomed(window, 1e-6, 0.5, day))).toBe(20 * 60_000);
    expect(length(zoomed(window, 1e6, 0.5, day))).toBe(hours(34) * 1000);
  });

  it('moves only as far as it must to show a task', () => {
    const window = windowAt(now, day);
    expect(showing(window, now, day)).toEqual(window);
    const late = instant(day.to - hours(2) * 1000);
    const place = placeIn(showing(window, late, day), late);
    expect(place).toBeGreaterThan(0);
    expect(place).toBeLessThanOrEqual(0.75 + 1e-6);
  });
});

describe('the rule over a chart', () => {
  it('has its strokes as close as there is room for', () => {
    const window = { from: now, to: instant(now + hours(10) * 1000) };
    expect(ruleStepMin(window, 1000, 100)).toBe(60);
    expect(ruleStepMin(window, 1000, 101)).toBe(120);
    expect(ruleStepMin(window, 100, 200)).toBe(1440);
  });

  it.each(['America/Denver', 'Asia/Kolkata', 'Australia/Lord_Howe'])(
    'stands on round hours of the clock in %s',
    (zone) => {
      const times = ruleOf(day, 120, zone).map((at) => wallTime(at, zone).time);
      expect(times.length).toBeGreaterThan(10);
      for (const time of times) expect(time).toMatch(/^(\d[02468]):00$/);
    },
  );

  it('goes over the night of the spring clock change without a stroke at the lost hour', () => {
    const spring = {
      from: instant(Date.UTC(2026, 2, 8, 6)),
      to: instant(Date.UTC(2026, 2, 8, 14)),
    };
    const times = ruleOf(spring, 60, 'America/Denver').map(
      (at) => wallTime(at, 'America/Denver').time,
    );
    expect(times).toContain('01:00');
    expect(times).toContain('03:00');
    expect(times).not.toContain('02:00');
  });
});
