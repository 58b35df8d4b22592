import type { catalogue } from '../demo/index.ts';

type FileCatalogue = typeof catalogue;

/** A catalogue, as it is written, of these dishes alone and of all that they are made with. */
export function onlyDishes(whole: FileCatalogue, ids: readonly string[]) {
  const dishes = whole.dishes.filter(({ id }) => ids.includes(id));
  const routes = whole.routes.filter(({ id }) => dishes.some(({ route }) => route === id));
  const cuts = withDonors(
    whole.cuts,
    routes.flatMap((route) => [route.cut, ...otherCuts(route)]),
  );
  const mixes = new Set(routes.flatMap(({ steps }) => steps.map(mixOf)));
  return {
    ...whole,
    dishes,
    cuts: whole.cuts.filter(({ id }) => cuts.has(id)),
    mixes: whole.mixes.filter(({ id }) => mixes.has(id)),
    routes,
  };
}

type FileRoute = FileCatalogue['routes'][number];

const mixOf = (step: object) => ('mix' in step ? step.mix : undefined);

/** The cuts that a route's options turn its own into. */
const otherCuts = ({ choices }: FileRoute): string[] =>
  choices.flatMap(({ options }) =>
    options.flatMap((option) =>
      'as' in option && typeof option.as === 'string' ? [option.as] : [],
    ),
  );

/** With the cuts whose lines they share on the pull list, and those whose trim they are made of. */
function withDonors(cuts: FileCatalogue['cuts'], ids: readonly string[]): Set<string> {
  const found = new Set<string>();
  const open = [...ids];
  for (let id = open.pop(); id !== undefined; id = open.pop()) {
    if (found.has(id)) continue;
    found.add(id);
    const cut = cuts.find((candidate) => candidate.id === id);
    if (cut === undefined) continue;
    if ('boughtAs' in cut && cut.boughtAs !== undefined) open.push(cut.boughtAs);
    if ('takenFrom' in cut) open.push(...(cut.takenFrom ?? []).map((taken) => taken.cut));
  }
  return found;
}
