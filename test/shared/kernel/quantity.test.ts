import { describe, expect, it } from 'vitest';
import {
  parseQuantity,
  type QuantityKind,
  quantityExample,
  quantityPattern,
} from '../../../shared/kernel/index.ts';

describe('an amount written with its unit', () => {
  it.each<[QuantityKind, string, number]>([
    ['weight in kilograms', '12 lb', 5.44310844],
    ['weight in kilograms', '2 lb 8 oz', 1.133980925],
    ['weight in kilograms', '1.2 kg', 1.2],
    ['length in metres', '24 in', 0.6096],
    ['length in metres', '1 ft 6 in', 0.4572],
    ['temperature in degrees Celsius', '212 °F', 100],
    ['temperature in degrees Celsius', '-40 °F', -40],
    ['temperature in degrees Celsius', '57 °C', 57],
    ['duration in seconds', '2 h 30 min', 9000],
    ['duration in seconds', '45 s', 45],
    ['volume in litres', '200 ml', 0.2],
    ['volume in litres', '1 qt', 0.946352946],
    ['volume in litres', '32 fl oz', 0.946352946],
    ['heat rate in degrees Celsius per second', '9 °F/min', 5 / 60],
    ['share of one', '68 %', 0.68],
  ])('is read as a %s: %s', (kind, text, inside) => {
    expect(quantityPattern(kind).test(text)).toBe(true);
    expect(parseQuantity(kind, text)).toBeCloseTo(inside, 9);
  });

  it.each<[QuantityKind, string]>([
    ['weight in kilograms', '12'],
    ['weight in kilograms', '12 pounds'],
    ['weight in kilograms', '-1 kg'],
    ['temperature in degrees Celsius', '250 F'],
    ['temperature in degrees Celsius', '200 °F 10 °F'],
    ['duration in seconds', '1:30'],
    ['share of one', '0.68'],
  ])('is not guessed at: %s is not %s', (kind, text) => {
    expect(quantityPattern(kind).test(text)).toBe(false);
  });

  it('is shown to the person in a form that is itself allowed', () => {
    const kinds: QuantityKind[] = ['weight in kilograms', 'duration in seconds', 'share of one'];
    for (const kind of kinds) {
      for (const [, example] of quantityExample(kind).matchAll(/"([^"]+)"/g)) {
        expect(quantityPattern(kind).test(example ?? '')).toBe(true);
      }
    }
  });
});
