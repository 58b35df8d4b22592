import { celsius } from '../kernel/index.ts';
import { saturationPressurePa } from './moist-air.ts';

const LOWEST_C = -60;
const HIGHEST_C = 200;
const PER_KELVIN = 8;

const entries = Float64Array.from({ length: (HIGHEST_C - LOWEST_C) * PER_KELVIN + 2 }, (_, i) =>
  saturationPressurePa(celsius(Math.min(LOWEST_C + i / PER_KELVIN, HIGHEST_C))),
);

/**
 * The entry below a temperature. Between entries the pressure is a straight line, within 1 Pa of
 * the formula to 120 °C, so that the heat model need not take a logarithm at every step. What is
 * hotter or colder than the table counts as its end: no meat is.
 */
const placeOf = (tempC: number) =>
  Math.max(0, Math.min((tempC - LOWEST_C) * PER_KELVIN, (HIGHEST_C - LOWEST_C) * PER_KELVIN));

/** Saturation pressure in Pa, from a table. @example steamPa(100) //=> 101,419 */
export function steamPa(tempC: number): number {
  const place = placeOf(tempC);
  const index = place | 0;
  const below = entries[index] as number;
  return below + (place - index) * ((entries[index + 1] as number) - below);
}

/** How fast it rises there, in Pa/K. @example steamPaPerK(100) //=> 3,617 */
export function steamPaPerK(tempC: number): number {
  const index = placeOf(tempC) | 0;
  return ((entries[index + 1] as number) - (entries[index] as number)) * PER_KELVIN;
}
