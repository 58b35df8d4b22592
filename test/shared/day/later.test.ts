import { describe, expect, it } from 'vitest';
import { isLate, laterS, mayBeOffered } from '../../../shared/day/later.ts';
import { minutes, type Seconds, seconds } from '../../../shared/kernel/index.ts';
import { type Say, sayMendLater, sayStanding, wholeMinutes } from '../../../shared/words/index.ts';

const service = (before: number | null, after: number | null) => ({
  beforeS: before === null ? null : minutes(before),
  afterS: after === null ? null : minutes(after),
});

const english: Say = {
  language: 'en',
  zone: 'UTC',
  clock: '24 h',
  temperature: '°C',
  weight: 'kg',
};

describe('when a service is late', () => {
  it('is from the first whole minute, which is when it is said to be', () => {
    for (const inHandS of [-200, -120, -119, -61, -60, -59, -1, 0, 90].map(seconds)) {
      expect(isLate(inHandS)).toBe(wholeMinutes(inHandS) < 0);
      const at = { opensAt: 1 as never, closesAt: 2 as never, heldBy: null, spread: null };
      const standing = { id: 'd' as never, name: { en: 'Dinner' }, ...at, inHandS };
      expect(sayStanding(standing, 0 as never, english)?.isLate).toBe(isLate(inHandS));
    }
  });
});

describe('what may be offered for a day', () => {
  it('is what makes no service later, nor late', () => {
    expect(mayBeOffered([service(-20, -5), service(40, 10)])).toBe(true);
    expect(mayBeOffered([service(-20, -5), service(null, null)])).toBe(true);
    expect(mayBeOffered([service(-20, -5), service(-3, -6)])).toBe(false);
    expect(mayBeOffered([service(-20, -5), service(4, -2)])).toBe(false);
  });

  it('is what makes one later only where another that was late holds by it', () => {
    expect(mayBeOffered([service(-20, 0), service(-3, -6)])).toBe(true);
    expect(mayBeOffered([service(5, 20), service(-3, -6)])).toBe(false);
  });

  it('counts by how much what will be late is later than it was', () => {
    expect(laterS(service(-3, -6))).toBe(180);
    expect(laterS(service(4, -2))).toBe(360);
    expect(laterS(service(40, 1))).toBe(0);
    expect(laterS({ beforeS: seconds(-70), afterS: seconds(-100) as Seconds })).toBe(0);
  });

  it('says in words what gets later by it and by how much', () => {
    const named = (name: string, before: number, after: number) => {
      return { id: name as never, name: { en: name }, ...service(before, after) };
    };
    const services = [named('Dinner', -20, 0), named('Lunch', -3, -11)];
    expect(sayMendLater({ services }, english)).toEqual([
      'But it makes Lunch 8 min later: 11 min late.',
    ]);
    expect(sayMendLater({ services }, { ...english, language: 'es' })).toEqual([
      'Pero Lunch saldría 8 min más tarde: 11 min de retraso.',
    ]);
  });
});
