import type { Celsius } from '../kernel/index.ts';
import { celsius } from '../kernel/index.ts';
import type { Judgement } from './judgement.ts';
import { judge } from './judgement.ts';
import { amountOf, degreesIn } from './printed.ts';
import type { Profile } from './profile.ts';

/** A thermometer held where the temperature is known; without `trueC` it stands in ice water. */
export type ThermometerCheck = {
  readonly measures: 'food' | 'air';
  readonly shownC: Celsius;
  readonly trueC?: Celsius;
};

/**
 * Whether a thermometer is as true as its kind must be. What is measured is how far off it is.
 * @example judgeThermometer(foodCode, { measures: 'food', shownC: celsius(1) }).ok //=> true
 */
export function judgeThermometer(
  profile: Profile,
  { measures, shownC, trueC = celsius(0) }: ThermometerCheck,
): Judgement {
  return judge(
    profile,
    'thermometer',
    ({ within }) => {
      const limit = amountOf(within);
      const off = Math.round(degreesIn(limit.unit, Math.abs(shownC - trueC)) * 1e6) / 1e6;
      return off <= limit.value ? null : { measured: { value: off, unit: limit.unit }, limit };
    },
    { only: (row) => row.measures === measures },
  );
}
