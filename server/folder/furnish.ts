import { existsSync, mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { LocalDay } from '../../shared/kernel/index.ts';
import { pageOf } from './page-of.ts';
import { schemaOf } from './schemas.ts';

/** What an opened folder was like. */
export type Furnished =
  /** It was new or empty: the files are in it now. */
  | 'furnished'
  | 'ready'
  /** It holds other things and no kitchen: nothing was written. */
  | 'foreign';

/** A kitchen's files as a person would write them. */
export type FirstFiles = {
  readonly kitchen: object;
  readonly catalogue: object;
  readonly cookPlan: { readonly day: LocalDay; readonly services: readonly object[] };
};

/** Makes sure that a folder holds a kitchen's files, and gives an empty one these. */
export function furnish(folder: string, first: () => FirstFiles): Furnished {
  mkdirSync(folder, { recursive: true });
  if (existsSync(join(folder, 'kitchen.json'))) return 'ready';
  if (readdirSync(folder).length > 0) return 'foreign';
  try {
    fill(folder, first());
  } catch (fault) {
    // A full disk: half a kitchen would be taken for a foreign folder, or a broken one.
    for (const file of FILES) rmSync(join(folder, file), { recursive: true, force: true });
    throw fault;
  }
  return 'furnished';
}

const FILES = ['plans', 'catalogue.json', 'kitchen.json'] as const;

function fill(folder: string, { kitchen, catalogue, cookPlan }: FirstFiles): void {
  const write = (file: string, $schema: string, value: object) =>
    writeFileSync(join(folder, file), pageOf({ $schema, ...value }));
  mkdirSync(join(folder, 'plans'));
  write(`plans/${cookPlan.day}.json`, schemaOf.cookPlan, cookPlan);
  write('catalogue.json', schemaOf.catalogue, catalogue);
  // Last: with it the folder counts as a kitchen's.
  write('kitchen.json', schemaOf.kitchen, kitchen);
}
