import type { Kilograms } from '../kernel/index.ts';
import { kilograms } from '../kernel/index.ts';
import { type Decision, refuse } from './decision.ts';

/** More than any cooler holds of one cut, and than any kitchen sells of one dish. */
export const MOST_PIECES = 10_000;
export const MOST_KG = kilograms(20_000);

/** Whether so many can have been counted. */
export const isCount = (n: number) => Number.isInteger(n) && n >= 0 && n <= MOST_PIECES;

/** Why so many pieces of such a weight cannot have come, or null. */
export function impossibleAmount(pieces: number, weightKg: Kilograms): Decision | null {
  if (!isCount(pieces)) return refuse({ rule: 'impossible-amount', amount: pieces });
  const isWeight = weightKg >= 0 && weightKg <= MOST_KG && weightKg > 0 === pieces > 0;
  return isWeight ? null : refuse({ rule: 'impossible-amount', weightKg });
}
