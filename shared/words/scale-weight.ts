import type { Kilograms } from '../kernel/index.ts';
import { toPounds } from '../kernel/index.ts';
import type { Say } from './say.ts';

/**
 * A weight as it is read off a bench scale, where a spoon too much matters: grams, or pounds with
 * ounces to a tenth.
 * @example scaleWeight(kilograms(0.6454), { weight: 'lb' }) //=> '1 lb 6.8 oz'
 */
export function scaleWeight(weightKg: Kilograms, { weight }: Pick<Say, 'weight'>): string {
  if (weight === 'kg') {
    const grams = Math.round(weightKg * 1000);
    return grams < 1000 ? `${grams} g` : `${(grams / 1000).toFixed(2)} kg`;
  }
  const tenths = Math.round(toPounds(weightKg) * 160);
  const pounds = Math.floor(tenths / 160);
  const ounces = `${trimmed((tenths % 160) / 10)} oz`;
  if (pounds === 0) return ounces;
  return tenths % 160 === 0 ? `${pounds} lb` : `${pounds} lb ${ounces}`;
}

const trimmed = (value: number) => value.toFixed(1).replace(/\.0$/, '');
