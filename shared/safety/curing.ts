import type { Kilograms } from '../kernel/index.ts';
import type { Judgement } from './judgement.ts';
import { allOf, judge } from './judgement.ts';
import { amountOf } from './printed.ts';
import type { Profile } from './profile.ts';
import type { CureMethod } from './row-schema.ts';

/** Nitrite in the curing salt that is sold as 6.25 %, the rest being common salt. */
export const CURE_STRENGTH = 0.0625;

const PPM = 1e6;

/**
 * Ingoing nitrite of meat that is pumped with, or steeped to take up, a share of its green weight
 * in pickle. FSIS Processing Inspectors' Calculations Handbook, chapter 3 (1995).
 * @example pumpedPpm({ nitriteKg: kilograms(2), pump: 0.1, pickleKg: kilograms(1000) }) //=> 200
 */
export function pumpedPpm({
  nitriteKg,
  pump,
  pickleKg,
}: {
  readonly nitriteKg: Kilograms;
  /** Pickle taken up, as a share of green weight: 0.1 for ten per cent. */
  readonly pump: number;
  /** All the pickle, what is dissolved in it included. */
  readonly pickleKg: Kilograms;
}): number {
  return (nitriteKg * pump * PPM) / pickleKg;
}

/**
 * Ingoing nitrite of meat that is rubbed with cure or ground with it, by green weight. Same source.
 * @example rubbedPpm({ nitriteKg: kilograms(0.0156), greenKg: kilograms(100) }) //=> 156
 */
export function rubbedPpm({
  nitriteKg,
  greenKg,
}: {
  readonly nitriteKg: Kilograms;
  readonly greenKg: Kilograms;
}): number {
  return (nitriteKg * PPM) / greenKg;
}

/**
 * Grams of cure for each kilogram of green meat. @example cureGramsPerKg(156) //=> 2.496
 */
export function cureGramsPerKg(ppm: number, strength = CURE_STRENGTH): number {
  return (ppm * 1000) / PPM / strength;
}

/**
 * Whether ingoing nitrite is neither more than the method allows nor less than meat kept chilled
 * must have. It is weighed by two people, whatever this says.
 * @example judgeNitrite(foodCode, { method: 'comminuted', ppm: 156 }).ok //=> true
 */
export function judgeNitrite(
  profile: Profile,
  { method, ppm }: { readonly method: CureMethod; readonly ppm: number },
): Judgement {
  const measured = { value: Math.round(ppm * 1e6) / 1e6, unit: 'ppm' } as const;
  return allOf([
    judge(
      profile,
      'nitrite',
      ({ atMost }) => {
        const limit = amountOf(atMost);
        return measured.value <= limit.value ? null : { measured, limit };
      },
      { only: (row) => row.method === method },
    ),
    judge(profile, 'nitrite-at-least', ({ atLeast }) => {
      const limit = amountOf(atLeast);
      return measured.value >= limit.value ? null : { measured, limit };
    }),
  ]);
}

/** Salt per cent by weight for each degree of the salometer, on which 100 is saturated brine. */
const SALT_PERCENT_PER_DEGREE = 0.263_95;

/** Salt by weight of a brine. @example saltPercent(40) //=> 10.558 */
export const saltPercent = (salometerDegrees: number) => salometerDegrees * SALT_PERCENT_PER_DEGREE;
