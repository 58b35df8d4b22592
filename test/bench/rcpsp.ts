import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import {
  genetic,
  lowerBound,
  type Precedence,
  type Project,
  precedenceOf,
  type Solved,
  solveExactly,
} from '../../shared/schedule/rcpsp/index.ts';
import { faultsOf } from '../shared/schedule/rcpsp/check-starts.ts';
import { type BestKnown, readBestKnown } from './rcpsp/best-known.ts';
import { readSch } from './rcpsp/read-sch.ts';
import { readSm } from './rcpsp/read-sm.ts';

/** For instances with most-lags; those with precedence alone are counted in schedules. */
const LIMIT_MS = 1_000;
/** The clock of the processor is dear to read: one question in so many looks at it. */
const ASKED_PER_LOOK = 16;

const READERS: readonly (readonly [RegExp, (text: string) => Project])[] = [
  [/\.sm$/i, readSm],
  [/\.sch$/i, readSch],
];

type Measured = {
  readonly name: string;
  readonly status: Solved['status'];
  readonly makespan?: number;
  readonly bound: number;
  readonly criticalPath?: number;
  readonly known?: BestKnown;
  readonly ms: number;
};

/**
 * `rcpsp DIR [--schedules N] [--seed S] [--ms LIMIT] [--every K]`: every instance of a folder, or
 * one in K. `.sm` files go by the genetic search with N schedules, `.sch` files by the exact one
 * within the limit. All times are the processor's, so that what else the machine does is not
 * counted. Each schedule is checked by what the tests check with. What is best known is read for
 * the report alone.
 *
 * - `solved`: instances with a schedule; `exact`: its length is proven, or that there is none.
 * - `mean_dev_pct_best`: over the best known, where there is one.
 * - `mean_dev_pct_cpm`: over the critical path, for `.sm` files.
 */
export async function bench(args: string[]): Promise<Record<string, number | null>> {
  const [dir] = args;
  if (dir === undefined || dir.startsWith('--')) throw new Error('say which folder to read');
  const schedules = option(args, 'schedules', 1_000);
  const seed = option(args, 'seed', 1);
  const limitMs = option(args, 'ms', LIMIT_MS);
  const every = option(args, 'every', 1);
  const known = readBestKnown(join(dir, 'best-known.csv'));
  const measured = filesOf(dir)
    .filter((_, i) => i % every === 0)
    .map(({ name, read }) => {
      const project = read(readFileSync(join(dir, name), 'utf8'));
      const precedence = precedenceOf(project);
      const solve = () =>
        precedence === undefined
          ? exactly(project, limitMs)
          : bySchedules(project, precedence, schedules, seed);
      const from = processorMs();
      const { starts, ...result } = { name, ...solve() };
      const ms = Math.round((processorMs() - from) * 10) / 10;
      const faults = starts === undefined ? [] : faultsOf(project, starts);
      if (faults.length > 0) throw new Error(`${name}: ${faults.join(', ')}`);
      const best = known.get(name);
      const line: Measured = { ...result, ms, ...(best === undefined ? {} : { known: best }) };
      console.log(JSON.stringify({ ...line, known: best && shown(best) }));
      return line;
    });
  return summary(measured);
}

function processorMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1_000;
}

function option(args: readonly string[], name: string, otherwise: number): number {
  const place = args.indexOf(`--${name}`);
  if (place === -1) return otherwise;
  const value = Number(args[place + 1]);
  if (!Number.isInteger(value) || value < 1) throw new Error(`--${name} wants a whole number`);
  return value;
}

function filesOf(dir: string) {
  const collator = new Intl.Collator('en', { numeric: true });
  return readdirSync(dir)
    .sort(collator.compare)
    .flatMap((name) =>
      READERS.filter(([ending]) => ending.test(name)).map(([, read]) => ({ name, read })),
    );
}

function bySchedules(project: Project, precedence: Precedence, schedules: number, seed: number) {
  const { bound, criticalPath } = lowerBound(project, precedence);
  const { makespan, starts } = genetic(project, precedence, { seed, schedules, bound });
  const status = makespan === bound ? ('optimal' as const) : ('feasible' as const);
  return { status, makespan, starts, bound, criticalPath };
}

function exactly(project: Project, limitMs: number) {
  const until = processorMs() + limitMs;
  let asked = 0;
  const shouldStop = () => ++asked % ASKED_PER_LOOK === 0 && processorMs() > until;
  const { status, best, bound } = solveExactly(project, { shouldStop });
  return { status, bound, ...best };
}

const shown = (known: BestKnown) =>
  known.kind === 'infeasible' ? 'infeasible' : `${known.lower}..${known.upper}`;

function summary(measured: readonly Measured[]): Record<string, number | null> {
  const count = (of: (line: Measured) => boolean) => measured.filter(of).length;
  const beyond = measured.flatMap(({ makespan, known }) =>
    makespan === undefined || known?.kind !== 'between' ? [] : [makespan / known.upper - 1],
  );
  const longer = measured.flatMap(({ makespan, criticalPath }) =>
    makespan === undefined || criticalPath === undefined ? [] : [makespan / criticalPath - 1],
  );
  return {
    instances: measured.length,
    solved: count(({ makespan }) => makespan !== undefined),
    infeasible_proven: count(({ status }) => status === 'infeasible'),
    exact: count(({ status }) => status === 'optimal' || status === 'infeasible'),
    unknown: count(({ status }) => status === 'unknown'),
    mean_dev_pct_best: meanPct(beyond),
    mean_dev_pct_cpm: meanPct(longer),
    max_ms: Math.max(0, ...measured.map(({ ms }) => ms)),
    total_s: Math.round(measured.reduce((sum, { ms }) => sum + ms, 0)) / 1_000,
  };
}

function meanPct(parts: readonly number[]): number | null {
  if (parts.length === 0) return null;
  return Math.round((parts.reduce((sum, part) => sum + part, 0) / parts.length) * 10_000) / 100;
}
