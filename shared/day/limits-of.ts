import { type Profile, profiles } from '../safety/index.ts';
import type { AdoptedPlan } from './adopted-plan.ts';

/** The limits that a plan was held to, and its day is; null where they are none that is known. */
export const limitsOf = ({
  limits,
  kitchen,
}: Pick<AdoptedPlan, 'limits' | 'kitchen'>): Profile | null =>
  limits ?? profiles.find(({ id }) => id === kitchen.limits) ?? null;
