import { must } from '../kernel/index.ts';
import { Facts } from './facts.ts';
import { UNBOUND } from './live-net.ts';
import type { Lag, Mode, Placement, Problem } from './model.ts';

/**
 * Nothing has happened; work takes as long as planned, a wait is between its least and its most.
 */
export function initialFacts(problem: Problem, placements: readonly Placement[]): Facts {
  const own = problem.lags.filter(({ from, to }) => from.activity === to.activity);
  const lengths = placements.map((placement, i) => {
    const activity = must(problem.activities[i], placement.activity);
    const mode = must(
      activity.modes.find(({ id }) => id === placement.mode),
      placement.mode,
    );
    return lengthsIn(own, mode, placement);
  });
  const minS = Int32Array.from(lengths, (each) => each.minS);
  const maxS = Int32Array.from(lengths, (each) => each.maxS);
  return new Facts(minS, maxS, UNBOUND);
}

/** How short and how long an activity may be as placed, its lags to itself included. */
export function lengthsIn(lags: readonly Lag[], mode: Mode, { activity, startS, endS }: Placement) {
  if (mode.length.kind === 'work') return { minS: endS - startS, maxS: endS - startS };
  let { minS, maxS }: { minS: number; maxS: number } = mode.length;
  for (const lag of lags) {
    const own = lag.from.activity === activity && lag.to.activity === activity;
    if (!own || lag.from.end === lag.to.end) continue;
    const forward = lag.from.end === 'start';
    const least = forward ? lag.minS : lag.maxS === undefined ? undefined : -lag.maxS;
    const most = forward ? lag.maxS : lag.minS === undefined ? undefined : -lag.minS;
    minS = Math.max(minS, least ?? minS);
    maxS = Math.min(maxS, most ?? maxS);
  }
  return { minS, maxS };
}
