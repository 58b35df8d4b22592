import type { LimitsHeld } from '../view/index.ts';

/** @example sayLimits({ id: 'food-code', version: 2 }) //=> 'food-code 2' */
export const sayLimits = ({ id, version }: Pick<LimitsHeld, 'id' | 'version'>): string =>
  `${id} ${version}`;

/** Who said why, one after the other. */
export const sayWhyLimits = (changes: LimitsHeld['changes']): string =>
  changes.map(({ why, by }) => `${why} (${by})`).join('; ');
