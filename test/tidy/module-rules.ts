import { posix } from 'node:path';
import type { Export, Module } from './source.ts';
import type { Fault } from './text-rules.ts';

/**
 * Whose values a room may use. The linter lets a type come from any room further down; a value
 * comes from these alone, so that what a screen loads stays small.
 */
const STANDS_ON: Readonly<Record<string, readonly string[]>> = {
  kernel: [],
  catalogue: ['kernel'],
  kitchen: ['kernel'],
  schedule: ['kernel'],
  cook: ['kernel'],
  safety: ['kernel'],
  plan: ['catalogue', 'kitchen', 'kernel'],
  day: ['plan', 'catalogue', 'kitchen', 'schedule', 'cook', 'safety', 'kernel'],
  record: ['day', 'kernel'],
  view: ['day', 'kernel'],
  words: ['view', 'kernel'],
  protocol: ['view', 'kernel'],
  paper: ['words', 'view', 'record', 'day', 'kernel'],
};

const roomOf = (path: string) => /^shared\/([^/]+)\//.exec(path)?.[1];

/** A value taken from a room that is not among those the importing room stands on. */
export function valuesFromAfar({ path, imports }: Module): Fault[] {
  const room = roomOf(path);
  if (room === undefined) return [];
  const below = STANDS_ON[room];
  if (below === undefined) return [`${path}:1 lies in a room that is not on the map`];
  return imports.flatMap(({ target, typeOnly, line }) => {
    const other = roomOf(target);
    if (other === undefined || other === room || typeOnly || below.includes(other)) return [];
    return [`${path}:${line} takes a value from ${other}/, where only types may come from`];
  });
}

/** Folders with a door: every room of `shared/`, and any other that has an `index.ts`. */
function foldersWithDoor(modules: readonly Module[]): Set<string> {
  const doors = modules.filter(({ path }) => posix.basename(path) === 'index.ts');
  const rooms = Object.keys(STANDS_ON).map((room) => `shared/${room}`);
  return new Set([...rooms, ...doors.map(({ path }) => posix.dirname(path))]);
}

const foldersAbove = (path: string): string[] => {
  const folder = posix.dirname(path);
  return folder === '.' ? [] : [folder, ...foldersAbove(folder)];
};

/** A folder's `index.ts` is its only door; a test may look inside what it tests. */
export function brokenDoors(modules: readonly Module[]): Fault[] {
  const doors = foldersWithDoor(modules);
  const shell = modules.filter(({ path }) => !path.startsWith('test/'));
  return shell.flatMap(({ path, imports }) =>
    imports.flatMap(({ target, line }) => {
      const passed = foldersAbove(target)
        .filter((folder) => doors.has(folder) && !path.startsWith(`${folder}/`))
        .find((folder) => target !== `${folder}/index.ts`);
      return passed === undefined ? [] : [`${path}:${line} goes past the door of ${passed}/`];
    }),
  );
}

const MAY_PARSE = /(^|\/)(schema\.ts|[^/]+-schema\.ts|schema\/[^/]+)$|^shared\/protocol\//;

/** Input is parsed at the edge, once: zod lives in the schema of a room and in the protocol. */
export function parsingInside({ path, imports }: Module): Fault[] {
  if (!path.startsWith('shared/') || MAY_PARSE.test(path)) return [];
  return imports
    .filter(({ target }) => target === 'zod' || target.startsWith('zod/'))
    .map(({ line }) => `${path}:${line} parses with zod outside a schema.ts`);
}

/** What others call has a sentence for them. */
export function undocumented({ path, exports }: Module): Fault[] {
  if (!path.startsWith('shared/')) return [];
  return exports
    .filter(({ kind, hasDoc }) => kind === 'function' && !hasDoc)
    .map(({ name, line }) => `${path}:${line} exports ${name}() without a doc comment`);
}

/**
 * An export of `shared/` that nothing uses, tests included: a value that no other file names, or a
 * type that is not even part of another one beside it.
 */
export function deadExports(modules: readonly Module[]): Fault[] {
  const filesNaming = new Map<string, number>();
  for (const { names } of modules) {
    for (const name of names.keys()) filesNaming.set(name, (filesNaming.get(name) ?? 0) + 1);
  }
  const isUsed = ({ name, kind }: Export, names: Module['names']) =>
    (filesNaming.get(name) ?? 0) > 1 || (kind === 'type' && (names.get(name) ?? 0) > 1);
  return modules
    .filter(({ path }) => path.startsWith('shared/'))
    .flatMap(({ path, exports, names }) =>
      exports
        .filter((exported) => !isUsed(exported, names))
        .map(({ name, line }) => `${path}:${line} exports ${name}, which nothing uses`),
    );
}

/** Rules about one file of code, each under the sentence it stands for. */
export const moduleRules = {
  'no room uses a value of a room it does not stand on': valuesFromAfar,
  'input is parsed at the edge alone': parsingInside,
  'every exported function of shared/ has a doc comment': undocumented,
};

/** Rules about all code taken together. */
export const wholeRules = {
  'a folder is entered by its door alone': brokenDoors,
  'nothing is exported from shared/ in vain': deadExports,
};
