/**
 * Salometer degrees and salt by weight, from a published brine table read in a copy: secondary
 * copy, edition not named there. 100 degrees is saturated brine, 26.395 % of salt.
 */
import { expect, it } from 'vitest';
import { saltPercent } from '../../shared/safety/index.ts';

it.each([
  [10, 2.64],
  [20, 5.279],
  [40, 10.558],
  [100, 26.395],
])('%d degrees are %d per cent of salt', (degrees, percent) => {
  // Half of the last printed digit.
  expect(Math.abs(saltPercent(degrees) - percent)).toBeLessThan(0.000_51);
});
