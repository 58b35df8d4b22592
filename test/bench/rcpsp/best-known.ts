import { existsSync, readFileSync } from 'node:fs';

/** The best results that others have published for an instance. */
export type BestKnown =
  | { readonly kind: 'between'; readonly lower: number; readonly upper: number }
  | { readonly kind: 'infeasible' };

/** Rows `problem,best known` by problem, `43`, `104..105` or `unsat`; none without a file. */
export function readBestKnown(path: string): ReadonlyMap<string, BestKnown> {
  if (!existsSync(path)) return new Map();
  const [, ...rows] = readFileSync(path, 'utf8').trim().split(/\r?\n/);
  return new Map(rows.map((row) => [row.split(',')[0] ?? '', read(row.split(',')[1] ?? '')]));
}

function read(value: string): BestKnown {
  if (value === 'unsat') return { kind: 'infeasible' };
  const [lower, upper = lower] = value.split('..').map(Number);
  if (!Number.isInteger(lower) || upper === undefined) throw new Error(`cannot read "${value}"`);
  return { kind: 'between', lower: lower ?? upper, upper };
}
