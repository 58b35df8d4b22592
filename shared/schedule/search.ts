import { must, seeded } from '../kernel/index.ts';
import { attempt } from './attempt.ts';
import { compile } from './compile.ts';
import type { Failure } from './generated.ts';
import { longestPaths } from './longest-paths.ts';
import type { Problem } from './model.ts';
import type { Slot } from './net.ts';
import { at } from './network.ts';
import { type TemporalOptions, temporalNet } from './temporal.ts';

/** What part of their margins the first attempts give to waits; the others give none. */
export const AIMS = [1, 1, 0.5, 0.5, 0.25];
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

/**
 * Tries one order of placing after the other until one holds; the first failure is the one told.
 */
export function search(problem: Problem, { seed, lateS, attempts }: SearchOptions): Found {
  const random = seeded(seed);
  const boostS = new Float64Array(problem.activities.length);
  let first: Failure | undefined;
  let net: ReturnType<typeof netAiming> | undefined;
  for (let number = 0; number < attempts; number++) {
    const aim = number < Math.floor(attempts / 2) ? (AIMS[number] ?? 0) : 0;
    if (aim !== net?.aim) net = netAiming(problem, { aim, lateS });
    if (!net.net) continue;
    const made = attempt(net.net, { number, random, boostS });
    if (made.ok) return { ok: true, slots: made.slots.filter((slot) => slot !== undefined) };
    const { activity } = made.failure;
    boostS[activity] = (boostS[activity] ?? 0) + BOOST_S;
    if (aim === 0) first ??= made.failure;
  }
  return { ok: false, failure: must(first, 'at least one attempt') };
}

/** The net for one aim; none where the lags do not leave so much room at all. */
export function netAiming(problem: Problem, options: TemporalOptions) {
  const { aim } = options;
  const { arcs, loS, hiS } = temporalNet(problem, options);
  const paths = aim > 0 ? longestPaths(arcs, loS) : undefined;
  const isTimely = !paths || (paths.ok && paths.timeS.every((s, node) => s <= at(hiS, node)));
  return { aim, net: isTimely ? compile(problem, options) : undefined };
}
