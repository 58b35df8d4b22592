import { readdirSync } from 'node:fs';

/** A measurement: named by its file here, its figures are the fields of the last line printed. */
type Bench = (args: string[]) => Promise<Record<string, unknown>>;

const names = readdirSync(import.meta.dirname)
  .filter((file) => file.endsWith('.ts') && file !== 'run.ts')
  .map((file) => file.replace(/\.ts$/, ''));

const [name = '', ...args] = process.argv.slice(2);
if (names.includes(name)) {
  const { bench }: { bench: Bench } = await import(`./${name}.ts`);
  console.log(JSON.stringify({ bench: name, ...(await bench(args)) }));
} else {
  console.error(`Say which to measure: npm run bench -- ${names.join(' | ')}`);
  process.exitCode = 1;
}
