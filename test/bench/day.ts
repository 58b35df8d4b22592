import { improve } from '../../shared/schedule/improve.ts';
import { check, construct, type Problem, type Schedule } from '../../shared/schedule/index.ts';
import { liveTimeline } from '../../shared/schedule/timeline.ts';
import { generatedDay } from '../shared/schedule/generated-day.ts';
import { type Measured, quantile, rounded, runTaps, timed } from './taps.ts';

const SEED = 1;
/** The least of a few plans in a warm machine; the first of all is told beside it. */
const REPEATS = 9;
/** At least so many taps, and one for each activity: with fewer it is a great day's first hours. */
const TAPS_LEAST = 1_000;
/** Of greater days than this not every tap is repeated, for a copy of the day takes its time. */
const ALL_REPEATED_MOST = 250;

/**
 * A generated day of so many activities (see `generatedDay`; 200 if nothing is said): how long a
 * plan takes, how far it is from a bound after a second and after ten, and what a tap costs.
 *
 * - `first_ms`: the first feasible plan, in processor time of a machine that has planned before;
 *   `cold_ms`: the first plan of all, by the clock, with all code read for the first time.
 * - `gap_0s_pct`, `gap_1s_pct`, `gap_10s_pct`: by how much `aheadS` is over its bound at first, and
 *   after so much processor time of improving.
 * - `retime_p50_ms`, `retime_p99_ms`: one tap, both directions, the median of a few repetitions
 *   from one state, so that what else the machine does counts for little.
 * - `passes_p99`: a tap over one full forward pass, side by side; `touched_ratio_p99`: how often
 *   times were worked out over how often they became others.
 * - `violations`: what the checker finds in the last plan.
 */
export async function bench([size = '200']: string[]): Promise<Record<string, number>> {
  const problem = generatedDay(Number(size), SEED);
  const cold = timed(() => planOf(problem));
  const warm = Array.from({ length: REPEATS }, () => usedBy(() => planOf(problem)));
  const soon = improved(problem, cold.value, 1_000);
  const late = improved(problem, cold.value, 10_000);
  return {
    n: problem.activities.length,
    cold_ms: rounded(cold.ms),
    first_ms: rounded(Math.min(...warm)),
    gap_0s_pct: improved(problem, cold.value, 0).gapPct,
    gap_1s_pct: soon.gapPct,
    gap_10s_pct: late.gapPct,
    steps_10s: late.steps,
    ...retimed(problem, late.schedule),
    violations: check(problem, late.schedule).length,
  };
}

/** Processor time in milliseconds: the same on a machine that does other things, too. */
function usedBy(deed: () => unknown): number {
  const before = process.cpuUsage();
  deed();
  return process.cpuUsage(before).user / 1_000;
}

function planOf(problem: Problem): Schedule {
  const planned = construct(problem, { seed: SEED });
  if (!planned.ok) throw new Error(`the day cannot be planned: ${JSON.stringify(planned)}`);
  return planned.schedule;
}

function improved(problem: Problem, from: Schedule, forMs: number) {
  const used = process.cpuUsage();
  const usedMs = () => process.cpuUsage(used).user / 1_000;
  const shouldStop = () => usedMs() >= forMs;
  const steps = Number.MAX_SAFE_INTEGER;
  const better = improve(problem, from, { seed: SEED, steps, shouldStop });
  const { worth, aheadLeastS } = better;
  return { ...better, gapPct: rounded((100 * (worth.aheadS - aheadLeastS)) / aheadLeastS) };
}

function retimed(problem: Problem, schedule: Schedule): Record<string, number> {
  const ids = problem.activities.map(({ id }) => id);
  const every = Math.ceil(ids.length / ALL_REPEATED_MOST);
  const day = { open: () => liveTimeline(problem, schedule), ids, repeats: 5, every };
  const count = Math.max(TAPS_LEAST, ids.length);
  runTaps({ ...day, count: Math.round(count / every / 3), seed: SEED + 1 });
  const taps = runTaps({ ...day, count, seed: SEED });
  const of = (key: keyof Measured) => taps.flatMap((tap) => tap[key] ?? []);
  return {
    taps: taps.length,
    retime_p50_ms: rounded(quantile(of('againMs'), 0.5)),
    retime_p99_ms: rounded(quantile(of('againMs'), 0.99)),
    passes_p99: rounded(quantile(of('passes'), 0.99)),
    touched_ratio_p99: rounded(quantile(of('touchedRatio'), 0.99)),
  };
}
