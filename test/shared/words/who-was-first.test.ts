import { expect, it } from 'vitest';
import { instant, type PersonId } from '../../../shared/kernel/index.ts';
import type { Refusal } from '../../../shared/view/index.ts';
import { type Say, sayRefusal } from '../../../shared/words/index.ts';

const say = (language: 'en' | 'es'): Say => ({
  language,
  zone: 'UTC',
  clock: '24 h',
  temperature: '°C',
  weight: 'kg',
});
const at = instant(Date.UTC(2026, 10, 28, 10, 42));
const ana = { id: 'ana' as PersonId, name: 'Ana' };

it.each<[Refusal, string, string]>([
  [
    { rule: 'already-done', at, by: ana, on: 'Pit wall' },
    'Already done by Ana at 10:42.',
    'Ya hecha por Ana a las 10:42.',
  ],
  [
    { rule: 'already-done', at, by: null, on: 'Pit wall' },
    'Already done on “Pit wall” at 10:42.',
    'Ya hecha en «Pit wall» a las 10:42.',
  ],
  [
    { rule: 'already-started', at, by: null, on: 'Pit wall' },
    'Already started on “Pit wall” at 10:42.',
    'Ya empezada en «Pit wall» a las 10:42.',
  ],
  [{ rule: 'already-done', at, by: null }, 'Already done at 10:42.', 'Ya hecha a las 10:42.'],
])('says who was first, as far as that is known', (refusal, english, spanish) => {
  expect(sayRefusal(refusal, say('en'))).toBe(english);
  expect(sayRefusal(refusal, say('es'))).toBe(spanish);
});
