import { describe, expect, it } from 'vitest';
import { instant, seconds } from '../../../shared/kernel/index.ts';
import type { ServiceOutlook } from '../../../shared/view/index.ts';
import type { Say } from '../../../shared/words/index.ts';
import { clockAhead, sayDayAhead, sayInHand, sayMargin } from '../../../shared/words/index.ts';

/** On Friday, 27 November 2026, and the days after it, in a kitchen in Denver. */
const at = (hour: number, minute = 0) => instant(Date.UTC(2026, 10, 27, hour + 7, minute));
const english: Say = {
  language: 'en',
  zone: 'America/Denver',
  clock: '12 h',
  temperature: '°F',
  weight: 'lb',
};
const spanish: Say = { ...english, language: 'es' };

describe('a time to come', () => {
  it('has its day with it where a reader at night would take it for half a day before', () => {
    expect(clockAhead(at(33, 48), at(20), english)).toBe('Sat 9:48 am');
    expect(clockAhead(at(33, 48), at(20), spanish)).toBe('sáb 9:48 am');
  });

  it('has none within half a day, where the clock alone is enough', () => {
    expect(clockAhead(at(33, 48), at(21, 50), english)).toBe('9:48 am');
  });

  it('has none on the same day, however early that is asked', () => {
    expect(sayDayAhead(at(18), at(5), english)).toBe('');
  });

  it('has it at the head of a screen, and not on a sheet that is of one day', () => {
    const lunch = { name: { en: 'lunch' }, opensAt: at(35), inHandS: 0 } as ServiceOutlook;
    expect(sayInHand(lunch, english, at(20))).toContain('Sat 11:00 am');
    expect(sayInHand(lunch, english)).not.toContain('Sat');
  });

  it('has no time of a service that has opened, which is on', () => {
    const lunch = { name: { en: 'Lunch' }, opensAt: at(11), inHandS: 660 } as ServiceOutlook;
    expect(sayInHand(lunch, english, at(12))).toBe('Lunch is on: 11 min to spare');
  });

  it.each([
    [20, 'on time, nothing to spare', '0 min to spare'],
    [-59, 'on time, nothing to spare', '0 min to spare'],
    [-60, '1 min late', '1 min late'],
  ])('with %s s in hand is said to be late only where it is by a minute', (s, said, margin) => {
    const lunch = { name: { en: 'Lunch' }, opensAt: at(11), inHandS: s } as ServiceOutlook;
    expect(sayInHand(lunch, english, at(12))).toBe(`Lunch is on: ${said}`);
    expect(sayMargin(seconds(s), english)).toBe(margin);
  });
});
