import { expect, it } from 'vitest';
import { instant } from '../../../shared/kernel/index.ts';
import { type Say, sayWhen } from '../../../shared/words/index.ts';

const say: Say = {
  language: 'en',
  zone: 'America/Chicago',
  clock: '12 h',
  temperature: '°F',
  weight: 'lb',
};
// A quarter to midnight in Chicago on a Friday, which is Saturday by UTC.
const at = instant(Date.UTC(2026, 10, 28, 5, 45));
const later = (minutes: number) => instant(at + minutes * 60_000);

it('says of today the time alone', () => {
  expect(sayWhen(at, later(10), say)).toBe('11:45 pm');
});

it('says the day with it once the kitchen has another one', () => {
  expect(sayWhen(at, later(20), say)).toBe('Fri, Nov 27, 11:45 pm');
  expect(sayWhen(at, later(20), { ...say, language: 'es', clock: '24 h' })).toMatch(
    /^vie, 27 nov\.?, 23:45$/,
  );
});
