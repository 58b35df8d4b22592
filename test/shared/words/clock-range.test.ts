import { describe, expect, it } from 'vitest';
import { type Instant, instant } from '../../../shared/kernel/index.ts';
import { clockRange, nearClock, nearRange, sinceClock } from '../../../shared/words/index.ts';

const at = (hour: number, minute: number) => instant(Date.UTC(2026, 10, 25, hour, minute));

describe('from when to when', () => {
  it('is two times of the kitchen', () => {
    const say = { zone: 'UTC', clock: '24 h' } as const;
    expect(clockRange(at(13, 5), at(13, 50), say)).toBe('13:05–13:50');
  });

  it('says the half of the day once where it is the same', () => {
    const say = { zone: 'UTC', clock: '12 h' } as const;
    expect(clockRange(at(13, 5), at(13, 50), say)).toBe('1:05–1:50 pm');
    expect(clockRange(at(11, 5), at(13, 50), say)).toBe('11:05 am–1:50 pm');
  });

  it('is one time where there is no doubt', () => {
    const say = { zone: 'UTC', clock: '24 h' } as const;
    expect(clockRange(at(13, 5), at(13, 5), say)).toBe('13:05');
  });
});

describe('a time to come', () => {
  const say = { zone: 'UTC', clock: '12 h' } as const;
  const now = at(9, 19);
  const near = (hour: number, minute: number) => nearClock(at(hour, minute), now, say);

  it('is said without the half of the day only where that is the half which is now', () => {
    expect([near(9, 19), near(11, 59)]).toEqual(['9:19', '11:59']);
    // Read as 9:12 in the morning it would have been seven minutes ago.
    expect([near(12, 0), near(21, 12)]).toEqual(['12:00 pm', '9:12 pm']);
    expect(near(26, 39)).toBe('2:39 am');
  });

  it('has the half of the day once it has been', () => {
    expect([near(9, 18), near(1, 30)]).toEqual(['9:18 am', '1:30 am']);
    expect(nearClock(at(9, 18), now, { ...say, clock: '24 h' })).toBe('09:18');
  });

  it('is as bare as a range for each end that is in this half of the day, begun or not', () => {
    const range = (low: Instant, high: Instant) => nearRange([low, high], now, say);
    expect(range(at(10, 5), at(11, 50))).toBe('10:05–11:50');
    expect(range(at(8, 5), at(11, 50))).toBe('8:05–11:50');
    expect(range(at(11, 5), at(13, 50))).toBe('11:05–1:50 pm');
    expect(range(at(21, 5), at(25, 50))).toBe('9:05 pm–1:50 am');
    expect(range(at(13, 5), at(13, 50))).toBe('1:05–1:50 pm');
    expect(range(at(7, 5), at(8, 50))).toBe('7:05–8:50 am');
  });
});

describe('a time that is over', () => {
  it('has the half of the day only where it was more than half a day ago', () => {
    const say = { zone: 'UTC', clock: '12 h' } as const;
    const since = (hour: number, minute: number) => sinceClock(at(hour, minute), at(15, 0), say);
    expect([since(14, 35), since(4, 35)]).toEqual(['2:35', '4:35']);
    expect(since(2, 59)).toBe('2:59 am');
    expect(sinceClock(at(14, 35), at(15, 0), { ...say, clock: '24 h' })).toBe('14:35');
  });
});
