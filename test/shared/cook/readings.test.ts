import { describe, expect, it } from 'vitest';
import { errorAtLast, observedIn, shownS, telling } from '../../../shared/cook/readings.ts';
import { celsius, hours, minutes, seconds } from '../../../shared/kernel/index.ts';
import { hourly } from './shoulder.ts';

const everyMinute = (count: number) =>
  Array.from({ length: count }, (_, i) => ({
    atS: minutes(i + 1),
    tempC: celsius(20 + i / 10),
    by: 'probe' as const,
  }));

describe('readings that tell something', () => {
  it('lie twenty minutes apart or more, the latest among them, and are never too many', () => {
    const told = telling(everyMinute(120)).map(({ atS }) => atS / 60);
    expect(told).toEqual([20, 40, 60, 80, 100, 120]);
    expect(telling(everyMinute(1500)).length).toBeLessThanOrEqual(24);
    expect(telling(everyMinute(1500)).at(-1)?.atS).toBe(minutes(1500));
  });

  it('are put in the order of their times, and of two at one time one counts', () => {
    const [first, second] = hourly(30, 50);
    if (first === undefined || second === undefined) throw new Error('two readings');
    expect(telling([second, first, { ...second }])).toEqual([first, second]);
  });

  it('are all kept where there are few', () => {
    expect(telling(hourly(30, 50, 60))).toEqual(hourly(30, 50, 60));
    expect(telling([])).toEqual([]);
  });
});

describe('what may be wrong between readings and model', () => {
  it('is shared by readings close in time, and less for a probe than for a hand', () => {
    const [a, b] = hourly(30, 50);
    if (a === undefined || b === undefined) throw new Error('two readings');
    const { covariance } = observedIn([a, { ...b, by: 'hand' }]);
    const [own = 0, shared = 0] = covariance[0] ?? [];
    expect(covariance[1]?.[0]).toBe(shared);
    expect(shared).toBeGreaterThan(0.3 * own);
    expect(covariance[1]?.[1]).toBeGreaterThan(own);
  });

  it('at the last reading is most of what was missed there', () => {
    const readings = hourly(30, 50, 60);
    const { meanK, sdK } = errorAtLast(readings)([0, 0, 2]);
    expect(meanK).toBeGreaterThan(1.2);
    expect(meanK).toBeLessThan(2);
    expect(sdK).toBeLessThan(0.6);
    expect(errorAtLast(readings)([2, 2, 2]).meanK).toBeGreaterThan(meanK);
  });

  it('is unknown as long as nothing was read', () => {
    expect(errorAtLast([])([])).toEqual({ meanK: 0, sdK: expect.any(Number) });
  });
});

describe('a target that a reading has shown', () => {
  const rising = { id: 'wrap', tempC: celsius(60), way: 'rising' } as const;
  const falling = { id: 'slice', tempC: celsius(60), way: 'falling' } as const;

  it('was passed at the first such reading, on the way up', () => {
    expect(shownS(rising, hourly(30, 61, 59, 70))).toBe(hours(2));
    expect(shownS(rising, hourly(30, 59))).toBeUndefined();
  });

  it('is passed on the way down only by what was above it', () => {
    expect(shownS(falling, hourly(30, 50))).toBeUndefined();
    expect(shownS(falling, hourly(30, 80, 70, 60, 50))).toBe(hours(4));
  });

  it('is found whatever order the readings come in', () => {
    expect(shownS(rising, hourly(30, 61, 70).reverse())).toBe(seconds(7200));
  });
});
