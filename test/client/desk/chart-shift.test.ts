import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { ChartShift } from '../../../client/desk/chart-shift.ts';
import { instant } from '../../../shared/kernel/index.ts';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

const window = (from: number) => ({ from: instant(from), to: instant(from + 100) });

function shiftOf() {
  const requestUpdate = vi.fn();
  const host = { addController: () => {}, removeController: () => {}, requestUpdate };
  return {
    shift: new ChartShift({ ...host, updateComplete: Promise.resolve(true) }),
    requestUpdate,
  };
}

it('draws what is seen where nothing moves', () => {
  const { shift } = shiftOf();
  expect(shift.drawnFor(window(0))).toEqual(window(0));
  expect(shift.isMoving).toBe(false);
});

it('draws more while it moves, and the same until that does not reach', () => {
  const { shift } = shiftOf();
  shift.move();
  const drawn = shift.drawnFor(window(0));
  expect(drawn).toEqual({ from: -50, to: 150 });
  expect(shift.drawnFor(window(50))).toBe(drawn);
  expect(shift.drawnFor(window(51))).toEqual({ from: 1, to: 201 });
});

it('asks for what is seen alone once it has been still', () => {
  const { shift, requestUpdate } = shiftOf();
  shift.move();
  vi.advanceTimersByTime(150);
  shift.move();
  vi.advanceTimersByTime(150);
  expect(requestUpdate).not.toHaveBeenCalled();
  vi.advanceTimersByTime(100);
  expect(requestUpdate).toHaveBeenCalledOnce();
  expect(shift.drawnFor(window(20))).toEqual(window(20));
});
