import { expect, it } from 'vitest';
import { kilograms } from '../../../shared/kernel/index.ts';
import type { Refusal } from '../../../shared/view/index.ts';
import { type Say, sayRefusal } from '../../../shared/words/index.ts';

const say = (language: 'en' | 'es', weight: Say['weight']): Say => ({
  ...{ language, weight, zone: 'UTC', clock: '24 h', temperature: '°C' },
});

it('says a weight that cannot be in the unit in which it was typed', () => {
  const refusal: Refusal = { rule: 'impossible-amount', weightKg: kilograms(45359.237) };
  expect(sayRefusal(refusal, say('en', 'lb'))).toBe('100000 lb cannot be: count or weigh again.');
  expect(sayRefusal(refusal, say('es', 'kg'))).toContain('45359.24 kg no puede ser');
});

it('says a number of pieces as it was typed', () => {
  const refusal: Refusal = { rule: 'impossible-amount', amount: 2.5 };
  expect(sayRefusal(refusal, say('en', 'lb'))).toBe('2.5 cannot be: count or weigh again.');
});
