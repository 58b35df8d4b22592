import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Say, Wanted } from '../../../shared/words/index.ts';
import { sayDay, sayTypedFault, shownClock, typedClock } from '../../../shared/words/index.ts';

const english: Say = {
  language: 'en',
  zone: 'America/Denver',
  clock: '12 h',
  temperature: '°F',
  weight: 'lb',
};
const spanish: Say = { ...english, language: 'es', clock: '24 h' };

describe('a time that is typed into a plan', () => {
  it.each([
    ['17:00', '5:00 pm'],
    ['00:15', '12:15 am'],
    ['12:00', '12:00 pm'],
    ['25:30', '1:30 am +1'],
  ])('%s stands there as %s in a kitchen with a 12-hour clock', (time, shown) => {
    expect(shownClock(time, english)).toBe(shown);
    expect(shownClock(time, spanish)).toBe(time);
  });

  it.each([
    ['5 pm', '17:00'],
    ['5:05PM', '17:05'],
    ['12:00 am', '00:00'],
    ['11 a.m.', '11:00'],
    [' 17:00 ', '17:00'],
    ['1:30 am +1', '25:30'],
  ])('%s is understood as %s', (typed, time) => {
    expect(typedClock(typed)).toBe(time);
  });

  it.each(['5', '5:3', '13 pm', '0 am', 'noon'])('%s stays for the hub to name', (typed) => {
    expect(typedClock(typed)).toBe(typed);
  });

  it('comes back as it was, whatever it is', () => {
    const times = fc.tuple(fc.integer({ min: 0, max: 47 }), fc.integer({ min: 0, max: 59 }));
    fc.assert(
      fc.property(times, (parts) => {
        const time = parts.map((part) => String(part).padStart(2, '0')).join(':');
        expect(typedClock(shownClock(time, english))).toBe(time);
      }),
    );
  });
});

describe('a day at the desk', () => {
  it('is written one way in each language', () => {
    expect(sayDay('2026-11-25', english)).toBe('Wed, Nov 25');
    expect(sayDay('2026-11-25', spanish)).toBe('mié, 25 nov');
    expect(sayDay('not a day', english)).toBe('not a day');
  });
});

describe('what is wrong with a typed field', () => {
  const kinds: readonly Wanted[] = [
    { kind: 'clock' },
    { kind: 'day' },
    { kind: 'count', least: 1 },
    { kind: 'some' },
    { kind: 'once' },
    { kind: 'one-of', words: 'a/1, a/2' },
  ];
  const saidIn = (say: Say) =>
    kinds.map((wanted) => sayTypedFault({ where: 'X', found: '', wanted }, say));

  it('is said with the kitchen\u2019s own clock', () => {
    expect(saidIn(english)[0]).toBe(
      'X: found nothing; allowed: a time such as 5:00 pm; 1:00 am +1 is the day after.',
    );
  });

  it('is said in Spanish to the last word', () => {
    expect(saidIn(spanish)).toEqual([
      'X: se encontró nada; se admite: una hora como 17:00; 25:00 es del día siguiente.',
      'X: se encontró nada; se admite: un día del calendario.',
      'X: se encontró nada; se admite: un número entero, 1 o más.',
      'X: se encontró nada; se admite: al menos uno.',
      'X: se encontró nada; se admite: cada platillo una vez en un servicio.',
      'X: se encontró nada; se admite: uno de: a/1, a/2.',
    ]);
  });
});
