import { expect, it } from 'vitest';
import { driftAfter } from '../../../client/stand/drift.ts';

const DAY_STEPS = (24 * 60) / 4;

it('comes to every place of a square in a day, so that no line stands on one', () => {
  const places = new Set(
    Array.from({ length: DAY_STEPS }, (_, steps) => JSON.stringify(driftAfter(steps))),
  );
  expect(places.size).toBe(7 * 7);
});

it('goes a pixel at a time each way, which nobody sees', () => {
  for (let steps = 0; steps < DAY_STEPS; steps++) {
    const [from, to] = [driftAfter(steps), driftAfter(steps + 1)];
    expect(Math.abs(to.leftPx - from.leftPx)).toBeLessThanOrEqual(1);
    expect(Math.abs(to.topPx - from.topPx)).toBeLessThanOrEqual(1);
  }
});

it('never makes a page longer or wider', () => {
  for (let steps = 0; steps < DAY_STEPS; steps++) {
    const { leftPx, topPx } = driftAfter(steps);
    expect(Math.max(leftPx, topPx)).toBeLessThanOrEqual(0);
    expect(Math.min(leftPx, topPx)).toBeGreaterThanOrEqual(-6);
  }
});
