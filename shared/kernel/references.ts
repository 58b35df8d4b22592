import { type FileFault, filePath, meant, shown } from './fault.ts';

/**
 * A word in one place of a file that must be said in another. Places are paths with `[]` for every
 * entry of a list and `*` for every key of an object: `dishes[].cut` must be one of `cuts[].id`.
 */
export type Reference = { readonly from: string; readonly to: string };

type Found = { readonly path: readonly PropertyKey[]; readonly value: unknown };

/**
 * Which references of a file lead nowhere and which of its `ids` are given twice. It reads the raw
 * JSON, so that it can speak also where other things are wrong.
 */
export function checkReferences(
  json: unknown,
  {
    ids,
    references,
  }: { readonly ids: readonly string[]; readonly references: readonly Reference[] },
): FileFault[] {
  const twice = ids.flatMap((place) => repeated(pick(json, place)));
  const lost = references.flatMap(({ from, to }) => {
    const words = pick(json, to).map(({ value }) => value);
    return pick(json, from)
      .filter(({ value }) => typeof value === 'string' && !words.includes(value))
      .map(({ path, value }) => unknownWord(path, value, words.map(String)));
  });
  return [...twice, ...lost];
}

/** Faults of places that refer to others, each with the words that would do there. */
export function withWords(
  faults: readonly FileFault[],
  json: unknown,
  references: readonly Reference[],
): FileFault[] {
  return faults.map((fault) => {
    const place = fault.path.replaceAll(/\[\d+\]/g, '[]');
    const reference = references.find(({ from }) => from === place);
    if (reference === undefined) return fault;
    const words = pick(json, reference.to).flatMap(({ value }) =>
      typeof value === 'string' ? [value] : [],
    );
    return words.length === 0 ? fault : { ...fault, allowed: `one of: ${words.join(', ')}` };
  });
}

/** The fault of a word that is not among those known, with what was likely meant. */
export function unknownWord(
  path: readonly PropertyKey[],
  value: unknown,
  words: readonly string[],
): FileFault {
  const likely = meant(String(value), words);
  return {
    path: filePath(path),
    found: shown(value),
    allowed: `one of: ${words.join(', ') || '(none is given)'}`,
    ...(likely === undefined ? {} : { meant: likely }),
  };
}

function repeated(found: readonly Found[]): FileFault[] {
  const values = found.map(({ value }) => value);
  return found
    .filter(({ value }, index) => typeof value === 'string' && values.indexOf(value) < index)
    .map(({ path, value }) => ({
      path: filePath(path),
      found: shown(value),
      allowed: 'a name that is given only once',
    }));
}

/** Every value at a place of raw JSON, with its path; what is not there is left out. */
function pick(json: unknown, place: string): Found[] {
  const keys = place.replaceAll('[]', '.[]').split('.');
  return keys.reduce<Found[]>(
    (found, key) => found.flatMap((at) => step(at, key)),
    [{ path: [], value: json }],
  );
}

function step({ path, value }: Found, key: string): Found[] {
  if (key === '') return [{ path, value }];
  if (key === '[]') {
    if (!Array.isArray(value)) return [];
    return value.map((item: unknown, index) => ({ path: [...path, index], value: item }));
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return [];
  const entries = Object.entries(value).filter(([name]) => key === '*' || name === key);
  return entries.map(([name, item]) => ({ path: [...path, name], value: item }));
}
