import { describe, expect, it } from 'vitest';
import { instant } from '../../../shared/kernel/index.ts';
import { clockRange, nearClock } from '../../../shared/words/index.ts';

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

describe('a time near by', () => {
  it('is said without the half of the day, and one half a day off or more with it', () => {
    const range = '11:05 am–1:50 pm';
    expect(nearClock(range, { at: at(13, 50), now: at(9, 0) })).toBe('11:05–1:50');
    expect(nearClock('9:00 pm', { at: at(21, 0), now: at(9, 0) })).toBe('9:00 pm');
    expect(nearClock('8:59 pm', { at: at(20, 59), now: at(9, 0) })).toBe('8:59');
  });
});
