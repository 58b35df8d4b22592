import { describe, expect, it } from 'vitest';
import { kilograms } from '../../../shared/kernel/index.ts';
import { scaleWeight } from '../../../shared/words/index.ts';

describe('a weight for a bench scale', () => {
  it.each([
    [0.032, '1.1 oz'],
    [0.45359237, '1 lb'],
    [0.6454, '1 lb 6.8 oz'],
    [0.45359, '1 lb'],
  ])('%d kg is %s', (kg, said) => {
    expect(scaleWeight(kilograms(kg), { weight: 'lb' })).toBe(said);
  });

  it.each([
    [0.032, '32 g'],
    [0.9996, '1.00 kg'],
    [1.6136, '1.61 kg'],
  ])('%d kg is %s in a kitchen that weighs in kilograms', (kg, said) => {
    expect(scaleWeight(kilograms(kg), { weight: 'kg' })).toBe(said);
  });
});
