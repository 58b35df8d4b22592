import { existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { instant } from '../../shared/kernel/index.ts';
import { demoFiles } from '../demo/index.ts';

/** What an opened folder was like. */
export type Furnished =
  /** It was new or empty: the demo's files are in it now. */
  | 'furnished'
  | 'ready'
  /** It holds other things and no kitchen: nothing was written. */
  | 'foreign';

/**
 * Makes sure that a folder holds a kitchen's files, and gives an empty one the demo's, of today and
 * of here.
 */
export function furnish(folder: string): Furnished {
  mkdirSync(folder, { recursive: true });
  if (existsSync(join(folder, 'kitchen.json'))) return 'ready';
  if (readdirSync(folder).length > 0) return 'foreign';
  const { timeZone } = Intl.DateTimeFormat().resolvedOptions();
  const { kitchen, catalogue, cookPlan } = demoFiles(instant(Date.now()), timeZone);
  const write = (file: string, value: unknown) =>
    writeFileSync(join(folder, file), `${JSON.stringify(value, null, 2)}\n`);
  mkdirSync(join(folder, 'plans'));
  write(`plans/${cookPlan.day}.json`, cookPlan);
  write('catalogue.json', catalogue);
  // Last: with it the folder counts as a kitchen's.
  write('kitchen.json', kitchen);
  return 'furnished';
}
