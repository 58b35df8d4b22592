import type { Catalogue } from '../../shared/catalogue/index.ts';
import type { Kitchen } from '../../shared/kitchen/index.ts';
import type { PlanMenu } from '../../shared/protocol/index.ts';

/** What a plan can be made of: the dishes with their choices, the people and the racks. */
export function menuOf({ kitchen, catalogue }: Parts): PlanMenu {
  return {
    dishes: catalogue.dishes.map(({ id, name, route: routeId }) => {
      const route = catalogue.routes.find((each) => each.id === routeId);
      return {
        id,
        name,
        choices: (route?.choices ?? []).map((choice) => ({
          id: choice.id,
          name: choice.name,
          usual: choice.usual,
          options: choice.options.map((option) => ({
            id: option.id,
            name: option.name,
            reason: option.reason,
          })),
        })),
        steps: (route?.steps ?? []).flatMap(({ id: step, work, title }) =>
          work === 'hands' ? [{ id: step, title }] : [],
        ),
      };
    }),
    people: kitchen.crew.map(({ id, name }) => ({ id, name })),
    slots: kitchen.smokers.flatMap(({ name, racks }) =>
      racks.map(({ slot }, index) => ({ id: slot, smoker: name, rack: index + 1 })),
    ),
  };
}

type Parts = { readonly kitchen: Kitchen; readonly catalogue: Catalogue };
