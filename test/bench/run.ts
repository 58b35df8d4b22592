import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ensureBuilt } from '../../server/ensure-built.mjs';

/** A measurement: named by its file here, its figures are the fields of the last line printed. */
type Bench = (args: string[]) => Promise<Record<string, unknown>>;

const isBench = (file: string) =>
  /^export (async )?function bench\b/m.test(readFileSync(join(import.meta.dirname, file), 'utf8'));

const names = readdirSync(import.meta.dirname, { withFileTypes: true })
  .filter((entry) => entry.isFile() && isBench(entry.name))
  .map((entry) => entry.name.replace(/\.ts$/, ''));

const [name = '', ...args] = process.argv.slice(2);
if (names.includes(name)) {
  ensureBuilt();
  const { bench }: { bench: Bench } = await import(`./${name}.ts`);
  console.log(JSON.stringify({ bench: name, ...(await bench(args)) }));
} else {
  console.error(`Say which to measure: npm run bench -- ${names.join(' | ')}`);
  process.exitCode = 1;
}
