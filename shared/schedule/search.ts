import { must, seeded } from '../kernel/index.ts';
import { attempt } from './attempt.ts';
import { compile } from './compile.ts';
import type { Failure } from './generate.ts';
import type { Problem } from './model.ts';
import type { Slot } from './net.ts';

/** So many attempts at most give waits the length they aim at; the others, as little as may be. */
const AIMING_ATTEMPTS = 4;
/** By how much an activity that found no room goes earlier in the next attempt. */
const BOOST_S = 900;

export type SearchOptions = {
  readonly seed: number;
  /** By how much to let each goal come late. */
  readonly lateS: readonly number[];
  readonly attempts: number;
};

export type Found =
  | { readonly ok: true; readonly slots: readonly Slot[] }
  | { readonly ok: false; readonly failure: Failure };

/** Tries one order of placing after the other until one holds; the first failure is the one told. */
export function search(problem: Problem, { seed, lateS, attempts }: SearchOptions): Found {
  const random = seeded(seed);
  const boostS = new Float64Array(problem.activities.length);
  let first: Failure | undefined;
  for (let number = 0; number < attempts; number++) {
    const aiming = number < Math.min(AIMING_ATTEMPTS, Math.floor(attempts / 2));
    const made = attempt(compile(problem, { aiming, lateS }), { number, random, boostS });
    if (made.ok) return { ok: true, slots: made.slots.filter((slot) => slot !== undefined) };
    const { activity } = made.failure;
    boostS[activity] = (boostS[activity] ?? 0) + BOOST_S;
    if (!aiming) first ??= made.failure;
  }
  return { ok: false, failure: must(first, 'at least one attempt') };
}
