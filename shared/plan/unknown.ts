import type { Catalogue, Route } from '../catalogue/index.ts';
import type { FileFault } from '../kernel/index.ts';
import { unknownWord } from '../kernel/index.ts';
import type { Kitchen } from '../kitchen/index.ts';
import type { CookPlan, PlannedDish } from './schema.ts';

type Against = { readonly kitchen: Kitchen; readonly catalogue: Catalogue };

/** Words of a cook plan that its kitchen and catalogue do not know. */
export function unknownInPlan(cookPlan: CookPlan, against: Against): FileFault[] {
  return cookPlan.services.flatMap((service, index) =>
    service.dishes.flatMap((planned, place) =>
      unknownInDish(planned, against, ['services', index, 'dishes', place]),
    ),
  );
}

/** Skills, benches and rounds of a kitchen that its catalogue does not know. */
export function unknownInKitchen(kitchen: Kitchen, catalogue: Catalogue): FileFault[] {
  const skills = catalogue.skills.map(({ id }) => id);
  const benches = catalogue.benches.map(({ id }) => id);
  const rounds = catalogue.rounds.map(({ id }) => id);
  const things = (['smokers', 'stations', 'cabinets', 'coolers'] as const).flatMap((list) =>
    kitchen[list].flatMap((thing, index) =>
      unknownOf(thing.rounds, rounds, [list, index, 'rounds']),
    ),
  );
  return [
    ...kitchen.crew.flatMap((person, index) =>
      (['trained', 'learning'] as const).flatMap((key) =>
        unknownOf(person[key], skills, ['crew', index, key]),
      ),
    ),
    ...kitchen.stations.flatMap((station, index) =>
      unknownOf(station.benches, benches, ['stations', index, 'benches']),
    ),
    ...things,
  ];
}

function unknownInDish(
  planned: PlannedDish,
  { kitchen, catalogue }: Against,
  path: readonly PropertyKey[],
): FileFault[] {
  const slots = kitchen.smokers.flatMap(({ racks }) => racks.map(({ slot }) => slot));
  const crew = kitchen.crew.map(({ id }) => id);
  const hands = Object.entries(planned.hands).flatMap(([step, person]) =>
    crew.includes(person) ? [] : [unknownWord([...path, 'hands', step], person, crew)],
  );
  const apart = [...unknownOf(planned.slots ?? [], slots, [...path, 'slots']), ...hands];
  const dish = catalogue.dishes.find(({ id }) => id === planned.dish);
  const route = catalogue.routes.find(({ id }) => id === dish?.route);
  if (route) return [...apart, ...unknownOfRoute(planned, route, path)];
  const dishes = catalogue.dishes.map(({ id }) => id);
  return [unknownWord([...path, 'dish'], planned.dish, dishes), ...apart];
}

function unknownOfRoute(
  { choices, hands }: PlannedDish,
  route: Route,
  path: readonly PropertyKey[],
): FileFault[] {
  const steps: readonly string[] = route.steps.map(({ id }) => id);
  const known = route.choices.map(({ id }) => id);
  const wrong = Object.entries(choices).flatMap(([id, option]) => {
    const choice = route.choices.find((candidate) => candidate.id === id);
    if (choice === undefined) return [unknownWord([...path, 'choices', id], id, known)];
    return unknownOf(
      [option],
      choice.options.map((one) => one.id),
      [...path, 'choices', id],
    );
  });
  const lost = Object.keys(hands).filter((step) => !steps.includes(step));
  return [...wrong, ...lost.map((step) => unknownWord([...path, 'hands', step], step, steps))];
}

function unknownOf(
  words: readonly string[],
  known: readonly string[],
  path: readonly PropertyKey[],
): FileFault[] {
  return words.flatMap((word, index) =>
    known.includes(word) ? [] : [unknownWord([...path, index], word, known)],
  );
}
