import { describe, expect, it } from 'vitest';
import { oddLot } from '../../../client/desk/odd-lot.ts';
import { celsius, fahrenheit, kilograms, toCelsius } from '../../../shared/kernel/index.ts';
import type { Say } from '../../../shared/words/index.ts';

const say: Say = {
  ...{ language: 'en', zone: 'UTC', clock: '24 h', temperature: '°F', weight: 'lb' },
};
type Lot = Parameters<typeof oddLot>[0];
const lot = { pieces: 8, weightKg: kilograms(16), supplier: 'Elm Meats', useBy: '2030-01-01' };
const cut = 'spare-ribs' as Lot['cut'];
const came = (tempC: Lot['tempC']): Lot => ({ ...lot, cut, code: null, tempC });
const readF = (shown: number) => came(toCelsius(fahrenheit(shown)));

describe('a lot whose temperature was likely read on the other scale', () => {
  it('is asked about: meat at 15 °C would go in as frozen', () => {
    expect(oddLot(readF(15), [], say)).toBe(
      '15 °F is frozen, and the thermometer may have shown 15 °C.',
    );
    expect(oddLot(readF(7), [], { ...say, language: 'es' })).toBe(
      '7 °F es congelado, y el termómetro quizá marcaba 7 °C.',
    );
  });

  // 41 °F, 5 °C, or less: 3-202.11(A), read in Washington's adoption of 2013.
  it('is asked about wherever it would be too warm in degrees Celsius', () => {
    for (let shown = 6; shown <= 28; shown++) expect(oddLot(readF(shown), [], say)).not.toBeNull();
  });

  it('is not where meat would be cold enough on either scale', () => {
    for (let shown = -10; shown <= 5; shown++) expect(oddLot(readF(shown), [], say)).toBeNull();
  });

  it.each([29, 34, 41, 50])('is not where %i °F is what it says', (shown) => {
    expect(oddLot(readF(shown), [], say)).toBeNull();
  });

  it('is not in a kitchen that reads degrees Celsius', () => {
    expect(oddLot(came(celsius(-18)), [], { ...say, temperature: '°C' })).toBeNull();
  });
});
