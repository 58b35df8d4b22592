import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { root } from '../fingerprint.mjs';

const SCHEMAS = join(root, 'docs/schema');

/** Where each kind of file finds its schema, from where it lies itself. */
export const schemaOf = {
  kitchen: './schema/kitchen.schema.json',
  catalogue: './schema/catalogue.schema.json',
  cookPlan: '../schema/cook-plan.schema.json',
  limits: './schema/limits.schema.json',
} as const;

/**
 * Keeps the JSON Schemas beside a kitchen's files, those of this very version: so an editor finds
 * them wherever the folder lies.
 */
export function keepSchemas(folder: string): void {
  const beside = join(folder, 'schema');
  mkdirSync(beside, { recursive: true });
  for (const name of Object.values(schemaOf).map((path) => basename(path))) {
    const text = readFileSync(join(SCHEMAS, name), 'utf8');
    const kept = join(beside, name);
    if (!existsSync(kept) || readFileSync(kept, 'utf8') !== text) writeFileSync(kept, text);
  }
}
