import type { Celsius, Fahrenheit } from '../kernel/index.ts';
import { fahrenheit, toCelsius } from '../kernel/index.ts';

/**
 * A published limit, in the unit and the digits it was printed in. Local code and the licensed authority overrule all of
 * them; none of the Food Code's rows was read in the 2022 edition itself, but in the named copies of it.
 */
export type Limit = {
  readonly id: string;
  readonly rule: string;
  readonly is: 'at least' | 'at most';
  readonly limitF: Fahrenheit;
  /** How long the temperature is held, or may last, where the row says so. */
  readonly forS?: number;
  readonly section: string;
  readonly source: string;
  readonly sure: 'read in a copy' | 'from memory';
};

/** The rows that the routes of ribs and shoulder rest on, from chapter 3 of the FDA Food Code. */
export const limits = [
  {
    id: 'cook-intact',
    rule: 'Intact meat, coldest part',
    is: 'at least',
    limitF: fahrenheit(145),
    forS: 15,
    section: '3-401.11(A)(1)',
    source: 'Minnesota Rules 4626.0340, adopting the Food Code',
    sure: 'read in a copy',
  },
  {
    id: 'cook-injected',
    rule: 'Injected, needled or ground meat, coldest part',
    is: 'at least',
    limitF: fahrenheit(155),
    // 15 s in editions before 2017.
    forS: 17,
    section: '3-401.11(A)(2)',
    source: 'Florida inspection text quoting the Food Code',
    sure: 'read in a copy',
  },
  {
    id: 'hot-hold',
    rule: 'Cooked food held hot',
    is: 'at least',
    limitF: fahrenheit(135),
    section: '3-501.16(A)(1)',
    source: 'Delaware Food Code, adopting the Food Code',
    sure: 'read in a copy',
  },
  {
    id: 'cold-hold',
    rule: 'Raw or cooked food held cold',
    is: 'at most',
    limitF: fahrenheit(41),
    section: '3-501.16(A)(2)',
    source: 'Delaware Food Code, adopting the Food Code',
    sure: 'read in a copy',
  },
  {
    id: 'time-as-control',
    rule: 'Food out of temperature control, from 41 °F or below, with a written procedure',
    is: 'at most',
    limitF: fahrenheit(41),
    forS: 4 * 3600,
    section: '3-501.19(B)',
    source: 'Georgia and Washington (WAC 246-215), adopting the Food Code',
    sure: 'read in a copy',
  },
] as const satisfies readonly Limit[];

export type LimitId = (typeof limits)[number]['id'];

/** The row of that name. @example limitOf('hot-hold').limitF //=> 135 */
export function limitOf(id: LimitId): Limit {
  return limits.find((row) => row.id === id) as Limit;
}

/**
 * Whether a temperature keeps a limit.
 * @example keepsLimit('hot-hold', celsius(57.2)) //=> false, it is 134.96 °F
 */
export function keepsLimit(id: LimitId, tempC: Celsius): boolean {
  const { is, limitF } = limitOf(id);
  const limitC = toCelsius(limitF);
  return is === 'at least' ? tempC >= limitC - ROUNDING_C : tempC <= limitC + ROUNDING_C;
}

/** Keeps a limit that was itself turned into degrees Celsius at the limit. */
const ROUNDING_C = 1e-9;
