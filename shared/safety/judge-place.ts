import type { Judgement } from './judgement.ts';
import { allOf, judge, notAllowed } from './judgement.ts';
import type { Profile } from './profile.ts';
import type { Kind } from './row-schema.ts';

/** What lies on a shelf. It is raw until it is past its lethality step. */
export type Lying = { readonly kind: Kind; readonly raw: boolean };

const birds: readonly Kind[] = ['chicken', 'turkey', 'poultry'];
const isRawPoultry = ({ kind, raw }: Lying) => raw && birds.includes(kind);

/**
 * Whether one thing may lie above another, where it can drip on it.
 * @example judgeAbove(foodCode, rawChicken, rawRibs).ok //=> false
 */
export function judgeAbove(profile: Profile, upper: Lying, lower: Lying): Judgement {
  const rawOnReady = upper.raw && !lower.raw;
  const birdOnOther = isRawPoultry(upper) && !isRawPoultry(lower);
  return allOf([
    ...(rawOnReady ? [judge(profile, 'raw-above-ready', () => notAllowed)] : []),
    ...(birdOnOther ? [judge(profile, 'raw-poultry-above', () => notAllowed)] : []),
  ]);
}

/** Whether things may go round together on turning racks, where each is above each at some time. */
export function judgeTurning(profile: Profile, load: readonly Lying[]): Judgement {
  return allOf(load.flatMap((upper) => load.map((lower) => judgeAbove(profile, upper, lower))));
}
