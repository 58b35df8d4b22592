import type { FileFault, FileRead, Reference } from '../kernel/index.ts';
import { checkReferences, filePath, readEntry, shown } from '../kernel/index.ts';
import type { Kitchen, Shift, Smoker } from './schema.ts';
import { kitchenSchema } from './schema.ts';

const ids = [
  'stations[].id',
  'smokers[].id',
  'cabinets[].id',
  'coolers[].id',
  'thermometers[].id',
  'crew[].id',
];
/** What is named in one place and described in another. */
const references: readonly Reference[] = [{ from: 'thermometers[].station', to: 'stations[].id' }];

/** Reads a kitchen, or says all that is wrong with it at once. */
export function readKitchen(json: unknown): FileRead<Kitchen> {
  const read = readEntry(kitchenSchema, json);
  const twice = checkReferences(json, { ids, references });
  if (!read.ok) return { ok: false, problems: [...read.problems, ...twice] };
  const kitchen: Kitchen = read.value;
  const problems = [
    ...twice,
    ...kitchen.smokers.flatMap(smokerFaults),
    ...kitchen.crew.flatMap((person, index) =>
      person.shifts.flatMap((shift, n) => shiftFaults(shift, ['crew', index, 'shifts', n])),
    ),
  ];
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: kitchen };
}

function smokerFaults({ coolestC, hottestC, racks }: Smoker, index: number): FileFault[] {
  const path = filePath(['smokers', index, 'hottest']);
  const turned: FileFault[] =
    coolestC <= hottestC
      ? []
      : [{ path, found: 'less than the coolest', allowed: 'the highest set temperature' }];
  const empty = racks.flatMap(({ lengthM, depthM, holdsKg }, n) =>
    Object.entries({ length: lengthM, depth: depthM, holds: holdsKg }).flatMap(([key, amount]) =>
      amount > 0 ? [] : [noughtIn(['smokers', index, 'racks', n, key])],
    ),
  );
  return [...turned, ...empty];
}

const noughtIn = (path: readonly PropertyKey[]): FileFault => ({
  path: filePath(path),
  found: 'nought',
  allowed: 'more than nought',
});

/** Wall times of one kind compare as text. */
function shiftFaults(shift: Shift, path: readonly PropertyKey[]): FileFault[] {
  const fault = (key: readonly PropertyKey[], found: string, allowed: string): FileFault => ({
    path: filePath([...path, ...key]),
    found: shown(found),
    allowed,
  });
  const { from, to, breaks } = shift;
  if (from >= to) {
    return [
      fault(['to'], to, `a time after ${from}; after midnight add 24 hours: "30:00" is 6:00`),
    ];
  }
  return breaks.flatMap((pause, index) =>
    from <= pause.from && pause.from < pause.to && pause.to <= to
      ? []
      : [fault(['breaks', index], `${pause.from}–${pause.to}`, `a time inside ${from}–${to}`)],
  );
}
