import type { KeptFood } from './happened.ts';
import type { DayState } from './state.ts';

/** All that is kept, by the days before and by the one that runs. */
export const keptBy = (state: DayState): readonly KeptFood[] => [
  ...state.kept,
  ...keptToday(state),
];

function keptToday({ plan, day, happened, story }: DayState): KeptFood[] {
  if (!plan || day === null) return [];
  return [...happened.carried].flatMap(([batch, weightKg]) => {
    const its = plan.built.batches.find(({ id }) => id === batch);
    const dish = plan.catalogue.dishes.find(({ id }) => id === its?.dish);
    const said = story.findLast((told) => told.kind === 'leftCarriedOver' && told.batch === batch);
    if (!dish || !said || weightKg <= 0) return [];
    const portions = Math.floor(weightKg / dish.portionKg + 1e-9);
    return [{ day, dish: dish.id, name: dish.name, weightKg, portions, at: said.at }];
  });
}
