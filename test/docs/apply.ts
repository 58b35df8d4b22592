import type { Fence } from './fences.ts';

/** The files of a kitchen's folder, by their names, as a person edits them. */
export type Folder = Map<string, unknown>;

/**
 * Does to the files what a page tells its reader to. After `json` the fence names the file, then a
 * place in it, such as `smokers[0].hottest` or `routes[turkey-sliced].steps`; then `+` to add it at
 * the end of a list, or `after ID` to put it in there. Without a place the keys are taken over.
 */
export function applied(folder: Folder, { words, text }: Fence): Folder {
  const [file = '', place, how, beside] = words.filter((word) => word !== '!');
  const files: Folder = new Map(structuredClone([...folder]));
  const root = files.get(file);
  if (root === undefined) throw new Error(`no such file: ${file}`);
  const value: unknown = JSON.parse(text);
  if (place === undefined) Object.assign(root as object, value);
  else put(root, keysOf(place), { value, how, beside });
  return files;
}

type Change = {
  readonly value: unknown;
  readonly how: string | undefined;
  readonly beside: string | undefined;
};

/** @example keysOf('smokers[a].rounds') //=> ['smokers', '[a', 'rounds'] */
const keysOf = (place: string) => place.replaceAll(']', '').replaceAll('[', '.[').split('.');

function put(root: unknown, keys: readonly string[], { value, how, beside }: Change) {
  const last = keys.at(-1) ?? '';
  const holder = keys.slice(0, -1).reduce(inside, root) as Record<string, unknown>;
  if (how === undefined) {
    holder[last] = value;
    return;
  }
  const list = inside(holder, last) as unknown[];
  const at = how === '+' ? list.length : 1 + list.findIndex((each) => idOf(each) === beside);
  if (how !== '+' && at === 0) throw new Error(`nothing called ${beside}`);
  list.splice(at, 0, value);
}

/** An entry of a list goes by its number or by its id. */
function inside(value: unknown, key: string): unknown {
  if (!key.startsWith('[')) return (value as Record<string, unknown>)[key];
  const list = value as readonly unknown[];
  const word = key.slice(1);
  const found = /^\d+$/.test(word) ? list[Number(word)] : list.find((each) => idOf(each) === word);
  if (found === undefined) throw new Error(`nothing called ${word}`);
  return found;
}

const idOf = (value: unknown) => (value as { readonly id?: unknown }).id;
