import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Catalogue, readCatalogue } from '../../shared/catalogue/index.ts';
import {
  type FileFault,
  type FileRead,
  isLocalDay,
  type LocalDay,
  readJsonText,
  shown,
} from '../../shared/kernel/index.ts';
import { type Kitchen, readKitchen } from '../../shared/kitchen/index.ts';
import { type CookPlan, readCookPlan, unknownInKitchen } from '../../shared/plan/index.ts';
import { type LimitsChange, readLimits } from '../../shared/safety/index.ts';

/** What a person wrote about a kitchen, as far as it is sound, and all that is not. */
export type FolderRead = {
  readonly kitchen: Kitchen | null;
  readonly catalogue: Catalogue | null;
  /** None where no file names any. */
  readonly limitChanges: readonly LimitsChange[] | null;
  /** In the order of their days. */
  readonly plans: readonly PlanOfDay[];
  readonly faults: readonly FolderFault[];
};

export type PlanOfDay = {
  readonly day: LocalDay;
  /** Null when the file is broken: a later plan must not be taken in its place. */
  readonly plan: CookPlan | null;
};

export type FolderFault = FileFault & { readonly file: string };

/** Reads all files of a kitchen. */
export function readFolder(folder: string): FolderRead {
  const faults: FolderFault[] = [];
  const fault = (file: string, problems: readonly FileFault[]) =>
    faults.push(...problems.map((problem) => ({ file, ...problem })));

  function read<T>(file: string, parse: (text: string) => FileRead<T>): T | null {
    const text = readText(join(folder, file));
    const parsed = text.ok ? parse(text.value) : text;
    if (parsed.ok) return parsed.value;
    fault(file, parsed.problems);
    return null;
  }

  const kitchen = read('kitchen.json', kitchenIn);
  const catalogue = read('catalogue.json', catalogueIn);
  const limitChanges = existsSync(join(folder, LIMITS)) ? read(LIMITS, inJson(readLimits)) : [];
  const against = kitchen && catalogue ? { kitchen, catalogue } : undefined;
  const across = kitchen && catalogue ? unknownInKitchen(kitchen, catalogue) : [];
  fault('kitchen.json', across);
  const plans = planFiles(folder).flatMap((file): PlanOfDay[] => {
    const name = `plans/${file}`;
    const day = file.replace(/\.json$/, '');
    if (!isLocalDay(day)) {
      fault(name, [{ path: NAME, found: shown(file), allowed: 'a day: "2026-11-25.json"' }]);
      return [];
    }
    const plan = read(
      name,
      inJson((json) => readCookPlan(json, against)),
    );
    if (plan === null || plan.day === day) return [{ day, plan }];
    fault(name, [{ path: 'day', found: shown(plan.day), allowed: `as the file: "${day}"` }]);
    return [{ day, plan: null }];
  });
  return { kitchen: across.length > 0 ? null : kitchen, catalogue, limitChanges, plans, faults };
}

const NAME = '(its name)';
/** Only a kitchen that changed its limits has one. */
const LIMITS = 'limits.json';

const inJson =
  <T>(parse: (json: unknown) => FileRead<T>) =>
  (text: string): FileRead<T> => {
    const json = readJsonText(text);
    return json.ok ? parse(json.value) : json;
  };

/**
 * The desk looks into the folder at every change that is tried, and a catalogue takes longer to
 * read than a plan to be changed: a file that says what it said the last time is not read anew.
 */
function unlessAsBefore<T>(parse: (text: string) => FileRead<T>): (text: string) => FileRead<T> {
  let last: { readonly text: string; readonly read: FileRead<T> } | null = null;
  return (text) => {
    if (last?.text !== text) last = { text, read: parse(text) };
    return last.read;
  };
}

const kitchenIn = unlessAsBefore(inJson(readKitchen));
const catalogueIn = unlessAsBefore(inJson(readCatalogue));

function planFiles(folder: string): string[] {
  try {
    return readdirSync(join(folder, 'plans'))
      .filter((name) => name.endsWith('.json'))
      .sort();
  } catch (fault) {
    if (isMissing(fault)) return [];
    throw fault;
  }
}

/** The value in a file, or why there is none. */
export function readJsonFile(path: string): FileRead<unknown> {
  const text = readText(path);
  return text.ok ? readJsonText(text.value) : text;
}

function readText(path: string): FileRead<string> {
  try {
    return { ok: true, value: readFileSync(path, 'utf8') };
  } catch (fault) {
    const found = isMissing(fault) ? 'no such file' : (fault as Error).message;
    return { ok: false, problems: [{ path: '(the whole file)', found, allowed: 'a JSON file' }] };
  }
}

const isMissing = (fault: unknown) => (fault as NodeJS.ErrnoException).code === 'ENOENT';

/** A fault of a file as a person reads it. */
export function faultLine({ file, path, found, allowed, meant }: FolderFault): string {
  const hint = meant === undefined ? '' : ` Maybe ${shown(meant)}.`;
  return `${file}: ${path}: found ${found}; allowed: ${allowed}.${hint}`;
}
