import type { Celsius, Kilograms } from '../kernel/index.ts';
import { tooCold, tooWarm } from './judgement.ts';
import { kilogramsOf } from './printed.ts';
import type { Profile } from './profile.ts';
import { rowsOf } from './profile.ts';
import type { Kind, LimitOf } from './row-schema.ts';

/** The fire a roast was cooked by. `humid` is above 90 % for an hour or more, or a sealed bag. */
export type Oven = {
  readonly heat: 'still, dry' | 'convection' | 'humid';
  readonly setC: Celsius;
  readonly pieceKg: Kilograms;
};

/**
 * Whether the profile lets the roast table count in this oven; null where it matters and no oven
 * was named. A dry, cool smoker is in no row of the code, so there it counts only if the profile
 * says so for any oven.
 * @example creditsRoastTable(foodCode, 'roast', undefined) //=> null
 */
export function creditsRoastTable(
  profile: Profile,
  kind: Kind,
  oven: Oven | undefined,
): boolean | null {
  const limits = rowsOf(profile, 'roast-oven', { kind }).map(({ limit }) => limit);
  if (limits.some((limit) => limit !== null && 'anyOven' in limit)) return true;
  if (oven === undefined) return null;
  return limits.some((limit) => limit !== null && 'ovens' in limit && listed(limit.ovens, oven));
}

type Listed = Extract<LimitOf<'roast-oven'>, { readonly ovens: unknown }>['ovens'];

function listed(ovens: Listed, { heat, setC, pieceKg }: Oven): boolean {
  return ovens.some(
    (one) =>
      one.heat === heat &&
      (one.atLeast === undefined || tooCold(one.atLeast, setC) === null) &&
      (one.atMost === undefined || tooWarm(one.atMost, setC) === null) &&
      (one.pieceUnder === undefined || pieceKg < kilogramsOf(one.pieceUnder)) &&
      (one.pieceFrom === undefined || pieceKg >= kilogramsOf(one.pieceFrom)),
  );
}
