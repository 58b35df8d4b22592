import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { BUILT_SCREENS } from '../server/built.mjs';
import { ensureBuilt } from '../server/ensure-built.mjs';

// What vite built, for those who measure it or look for faults in it.

const Manifest = z.record(
  z.string(),
  z.object({
    file: z.string(),
    imports: z.array(z.string()).default([]),
    dynamicImports: z.array(z.string()).default([]),
    assets: z.array(z.string()).default([]),
  }),
);

/** The bytes of one built file, named from their folder. */
export const builtFile = (file: string): Buffer => readFileSync(join(BUILT_SCREENS, file));

/** Every script of the screens, built anew first if the sources have changed. */
export function builtScripts(): string[] {
  ensureBuilt();
  return readdirSync(BUILT_SCREENS, { recursive: true, encoding: 'utf8' }).filter((file) =>
    file.endsWith('.js'),
  );
}

/**
 * Every script one page loads: at once, by its imports, and late. `never` names sources that are
 * fetched late by others and not by this one, as the words of another language.
 */
export function scriptsOf(page: string, never: readonly string[] = []): string[] {
  ensureBuilt();
  if (!existsSync(join(BUILT_SCREENS, page))) throw new Error(`No page ${page} was built.`);
  const manifest = Manifest.parse(JSON.parse(builtFile('.vite/manifest.json').toString()));
  const keyOf = new Map(Object.entries(manifest).map(([key, { file }]) => [file, key]));

  const html = builtFile(page).toString();
  const named = [...html.matchAll(/(?:src|href)="\/([^"]+\.js)"/g)].map(([, file = '']) => file);

  const scripts = new Set<string>();
  const visit = (file: string) => {
    if (!file.endsWith('.js') || scripts.has(file)) return;
    scripts.add(file);
    const chunk = manifest[keyOf.get(file) ?? ''];
    if (chunk === undefined) return;
    const late = chunk.dynamicImports.filter((key) => !never.some((name) => key.endsWith(name)));
    for (const key of [...chunk.imports, ...late]) visit(manifest[key]?.file ?? '');
    for (const asset of chunk.assets) visit(asset);
  };
  for (const file of named) visit(file);
  return [...scripts];
}
