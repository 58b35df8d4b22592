import type { ChosenStep, Cut } from '../catalogue/index.ts';
import type { StepId } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import type { FoodKind } from './limits.ts';

/**
 * What the food is to the limits during each step: what its species is, until a step makes it
 * something else, as injecting makes whole meat injected.
 */
export function kindsOf(
  { species }: Pick<Cut, 'species'>,
  steps: readonly ChosenStep[],
): ReadonlyMap<StepId, FoodKind> {
  const kinds = new Map<StepId, FoodKind>();
  for (const { step, after } of steps) {
    const before = after.map((id) => must(kinds.get(id), id));
    const made = before.find((kind) => kind !== usualKind(species));
    const changed = isMeat(species) ? (step.makes ?? made) : undefined;
    kinds.set(step.id, changed ?? usualKind(species));
  }
  return kinds;
}

/** The rows for birds and plants hold whatever is done to them. */
const isMeat = (species: Cut['species']) =>
  species === 'beef' || species === 'pork' || species === 'lamb';

const usualKind = (species: Cut['species']): FoodKind =>
  species === 'beef' || species === 'pork' || species === 'lamb' ? 'intact' : species;
