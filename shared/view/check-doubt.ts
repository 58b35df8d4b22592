import type { Celsius } from '../kernel/index.ts';
import { celsius, fahrenheit, toCelsius } from '../kernel/index.ts';
import type { CheckView } from './check-view.ts';

export type TempUnit = '°F' | '°C';

/** What is doubtful about a number beside its limit, before it is kept. */
export type Doubt =
  /** No probe in food shows it, in either unit. */
  | { readonly kind: 'impossible' }
  /** In the other unit it would be usual. `typedC` is null where it cannot be as it was typed. */
  | {
      readonly kind: 'other-unit';
      readonly typedC: Celsius | null;
      readonly otherC: Celsius;
    };

/** What a probe in food can show (common practice, no source). */
export const PROBE_LOW_C = celsius(-30);
export const PROBE_HIGH_C = celsius(105);

/** What is cooked or kept hot is never so cold; all else may come out of a freezer. */
export const mayBeBelowZero = (kind: CheckView['on']['kind']): boolean =>
  kind !== 'end-temperature' && kind !== 'hot-hold' && kind !== 'reheat';

/** A cooler is no colder than this, and food is brought hot or cold from no further (judged). */
const COOLER_C = -2;
const NEAR_HOT_K = 15;
const NEAR_COLD_K = 5;

/**
 * Whether a number was likely read in the other unit, or on no thermometer at all; null where there
 * is nothing to ask.
 * @example doubtOf(74, '°F', { atLeastC: celsius(57.2), atMostC: null })?.kind //=> 'other-unit'
 */
export function doubtOf(
  shown: number,
  unit: TempUnit,
  { atLeastC, atMostC }: Pick<CheckView, 'atLeastC' | 'atMostC'>,
): Doubt | null {
  const typedC = unit === '°F' ? toCelsius(fahrenheit(shown)) : celsius(shown);
  const otherC = unit === '°F' ? celsius(shown) : toCelsius(fahrenheit(shown));
  if (!isShown(typedC)) {
    return isShown(otherC) ? { kind: 'other-unit', typedC: null, otherC } : { kind: 'impossible' };
  }
  if (!isShown(otherC)) return null;
  const doubt: Doubt = { kind: 'other-unit', typedC, otherC };
  if (atLeastC !== null) {
    return typedC < atLeastC && otherC >= atLeastC - NEAR_HOT_K ? doubt : null;
  }
  if (atMostC === null) return null;
  const isUsual = COOLER_C <= otherC && otherC <= atMostC + NEAR_COLD_K;
  const isOdd = typedC > atMostC || typedC < -10;
  return isOdd && isUsual ? doubt : null;
}

const isShown = (tempC: Celsius): boolean => PROBE_LOW_C <= tempC && tempC <= PROBE_HIGH_C;
