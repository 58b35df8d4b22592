import type { FileFault, FileRead, Reference } from '../kernel/index.ts';
import {
  checkReferences,
  filePath,
  readEntry,
  shown,
  unknownWord,
  withWords,
} from '../kernel/index.ts';
import { amountFaults } from './amount-faults.ts';
import { cureFaults } from './cure-faults.ts';
import { routeFaults } from './route-faults.ts';
import type { Choice, Route } from './route-schema.ts';
import type { Catalogue } from './schema.ts';
import { catalogueSchema } from './schema.ts';
import { drawnParts } from './standard-schema.ts';

const ids = [
  'skills[].id',
  'benches[].id',
  'cuts[].id',
  'mixes[].id',
  'routes[].id',
  'dishes[].id',
  'rounds[].id',
];

const references: readonly Reference[] = [
  { from: 'dishes[].cut', to: 'cuts[].id' },
  { from: 'dishes[].route', to: 'routes[].id' },
  { from: 'cuts[].boughtAs', to: 'cuts[].id' },
  { from: 'cuts[].takenFrom[].cut', to: 'cuts[].id' },
  { from: 'routes[].choices[].options[].as', to: 'cuts[].id' },
  { from: 'rounds[].bench', to: 'benches[].id' },
  { from: 'rounds[].skill', to: 'skills[].id' },
  { from: 'routes[].cut', to: 'cuts[].id' },
  { from: 'routes[].steps[].bench', to: 'benches[].id' },
  { from: 'routes[].steps[].skill', to: 'skills[].id' },
  { from: 'routes[].steps[].mix', to: 'mixes[].id' },
];

/** Within one route. */
const routeIds = ['steps[].id', 'choices[].id'];
const routeReferences: readonly Reference[] = [
  { from: 'steps[].after[]', to: 'steps[].id' },
  { from: 'steps[].spans.from.step', to: 'steps[].id' },
  { from: 'steps[].spans.to.step', to: 'steps[].id' },
  { from: 'limits[].from.step', to: 'steps[].id' },
  { from: 'limits[].to.step', to: 'steps[].id' },
];

/** Reads a catalogue, or says all that is wrong with it at once, references and routes included. */
export function readCatalogue(json: unknown): FileRead<Catalogue> {
  const read = readEntry(catalogueSchema, json);
  const lost = [...checkReferences(json, { ids, references }), ...faultsWithinRoutes(json)];
  if (!read.ok) {
    const named = withWords(read.problems, json, references);
    return { ok: false, problems: [...named, ...lost] };
  }
  const catalogue: Catalogue = read.value;
  const problems = [
    ...lost,
    ...catalogue.routes.flatMap(choiceFaults),
    ...dishFaults(catalogue),
    ...tubFaults(catalogue),
    ...standardFaults(catalogue),
    ...amountFaults(catalogue),
    ...cureFaults(catalogue),
  ];
  if (problems.length > 0) return { ok: false, problems };
  const broken = catalogue.routes.flatMap(routeFaults);
  return broken.length > 0 ? { ok: false, problems: broken } : { ok: true, value: catalogue };
}

function faultsWithinRoutes(json: unknown): FileFault[] {
  const routes = (json as { readonly routes?: unknown } | null)?.routes;
  if (!Array.isArray(routes)) return [];
  return routes.flatMap((route: unknown, index) =>
    checkReferences(route, { ids: routeIds, references: routeReferences }).map((fault) => ({
      ...fault,
      path: `${filePath(['routes', index])}.${fault.path}`,
    })),
  );
}

/** What a route says of its choices must be one of them. */
function choiceFaults(route: Route, index: number): FileFault[] {
  const options: Options = new Map(
    route.choices.map((choice) => [choice.id, choice.options.map(({ id }) => id)]),
  );
  const usual = route.choices.flatMap((choice, n) =>
    usualFaults(choice, options, ['routes', index, 'choices', n]),
  );
  const conditions = (['steps', 'limits'] as const).flatMap((list) =>
    route[list].flatMap(({ when = {} }, n) =>
      conditionFaults(when, options, ['routes', index, list, n, 'when']),
    ),
  );
  return [...usual, ...conditions];
}

type Options = ReadonlyMap<string, readonly string[]>;

/** The usual option is one of the choice's own; what it hangs on has been chosen before. */
function usualFaults(
  { id, usual, usualWhen = [] }: Choice,
  options: Options,
  path: readonly PropertyKey[],
): FileFault[] {
  const own = options.get(id) ?? [];
  const ids = [...options.keys()];
  const before: Options = new Map(
    ids.slice(0, ids.indexOf(id)).map((other) => [other, options.get(other) ?? []]),
  );
  const isOwn = (word: string, ...keys: readonly PropertyKey[]) =>
    own.includes(word) ? [] : [unknownWord([...path, ...keys], word, own)];
  return [
    ...isOwn(usual, 'usual'),
    ...usualWhen.flatMap((other, n) => [
      ...isOwn(other.usual, 'usualWhen', n, 'usual'),
      ...conditionFaults(other.when ?? {}, before, [...path, 'usualWhen', n, 'when']),
    ]),
  ];
}

function conditionFaults(
  when: NonNullable<Route['steps'][number]['when']>,
  options: Options,
  path: readonly PropertyKey[],
): FileFault[] {
  return Object.entries(when).flatMap(([choice, said]) => {
    const allowed = options.get(choice);
    if (allowed === undefined) return [unknownWord([...path, choice], choice, [...options.keys()])];
    return said.flatMap((option, place) =>
      allowed.includes(option) ? [] : [unknownWord([...path, choice, place], option, allowed)],
    );
  });
}

/** What is taken from another cut is one of its tubs. */
function tubFaults({ cuts }: Catalogue): FileFault[] {
  return cuts.flatMap(({ takenFrom = [] }, index) =>
    takenFrom.flatMap((taken, n) => {
      const donor = cuts.find(({ id }) => id === taken.cut);
      const tubs = donor?.tubs.map(({ id }) => id) ?? [];
      if (donor === undefined || tubs.includes(taken.tub)) return [];
      return [unknownWord(['cuts', index, 'takenFrom', n, 'tub'], taken.tub, tubs)];
    }),
  );
}

/** What is named of a drawing is a part of it. */
function standardFaults({ cuts }: Catalogue): FileFault[] {
  return cuts.flatMap(({ standard }, index) =>
    (['off', 'stays'] as const).flatMap((list) =>
      (standard?.[list] ?? []).flatMap(({ part }, n) => {
        const parts: readonly string[] = standard?.drawing ? drawnParts[standard.drawing] : [];
        if (part === undefined || parts.includes(part)) return [];
        return [unknownWord(['cuts', index, 'standard', list, n, 'part'], part, parts)];
      }),
    ),
  );
}

/** A dish is made of the cut that its route is for. */
function dishFaults({ dishes, routes }: Catalogue): FileFault[] {
  return dishes.flatMap((dish, index) => {
    const fitting = routes.filter(({ cut }) => cut === dish.cut).map(({ id }) => id);
    if (fitting.includes(dish.route) || !routes.some(({ id }) => id === dish.route)) return [];
    return [
      {
        path: filePath(['dishes', index, 'route']),
        found: shown(dish.route),
        allowed: `a route for "${dish.cut}": ${fitting.join(', ') || '(none is given)'}`,
      },
    ];
  });
}
