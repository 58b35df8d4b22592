import { minutes } from '../kernel/index.ts';
import type { Sales } from './schema.ts';

export const QUARTER_S = minutes(15);

/**
 * Portions asked for in each quarter of an hour of a service that has so many of them.
 * @example portionsPerQuarter({ by: 'shape', portions: 8, shape: 'even' }, 4) //=> [2, 2, 2, 2]
 */
export function portionsPerQuarter(sales: Sales, quarters: number): number[] {
  if (sales.by === 'quarter') {
    return Array.from({ length: quarters }, (_, index) => sales.portions[index] ?? 0);
  }
  const weights = Array.from({ length: quarters }, (_, index) =>
    shapes[sales.shape]((index + 0.5) / quarters),
  );
  return apportion(sales.portions, weights);
}

/**
 * Demand over the service, from 0 at the opening to 1 at the close; only its proportions matter
 * (common practice).
 */
const shapes: Readonly<Record<'even' | 'early' | 'middle' | 'late', (at: number) => number>> = {
  even: () => 1,
  early: (at) => 1.75 - 1.5 * at,
  middle: (at) => 0.25 + 1.5 * (1 - Math.abs(2 * at - 1)),
  late: (at) => 0.25 + 1.5 * at,
};

/**
 * A whole number shared out in proportion to weights, by the method of largest remainders, so that
 * the shares are whole and add up to it. @example apportion(5, [1, 1, 2]) //=> [1, 1, 3]
 */
function apportion(total: number, weights: readonly number[]): number[] {
  const sum = weights.reduce((a, b) => a + b, 0);
  const exact = weights.map((weight) => (total * weight) / sum);
  const shares = exact.map(Math.floor);
  const left = total - shares.reduce((a, b) => a + b, 0);
  const byRemainder = exact
    .map((share, index) => ({ index, remainder: share - Math.floor(share) }))
    .sort((a, b) => b.remainder - a.remainder || a.index - b.index);
  const raised = new Set(byRemainder.slice(0, left).map(({ index }) => index));
  return shares.map((share, index) => share + (raised.has(index) ? 1 : 0));
}
