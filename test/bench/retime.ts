import { construct } from '../../shared/schedule/index.ts';
import { liveTimeline } from '../../shared/schedule/timeline.ts';
import { barbecueDay } from '../shared/schedule/barbecue-day.ts';
import { type Measured, quantile, rounded, runTaps } from './taps.ts';

const TASKS = 300;
const TAPS = 1_000;
const SEED = 1;
/** Repetitions of one tap from one and the same state; their median is its cost in passes. */
const REPEATS = 7;
/** Taps on a copy of the day beforehand, for the machine to warm up. */
const WARM_UP_TAPS = 300;

/**
 * Re-timing a day of 300 tasks by 1,000 taps, made as the day goes by: starts, finishes early and
 * late, "late by so much", taps taken back, each with the clock moved on to it.
 *
 * - `p50_ms`, `p99_ms`: one tap, both directions, as it comes.
 * - `passes_p99`: the median cost of a tap over the median cost of one full forward pass over the
 *   same network in the same state, both repeated side by side.
 * - `touched_ratio_p99`: how often times were worked out over how often they became others, in both
 *   directions; a tap that changes nothing counts as having changed one.
 */
export async function bench(): Promise<Record<string, number>> {
  const problem = barbecueDay(TASKS, SEED);
  const planned = construct(problem, { seed: SEED });
  if (!planned.ok) throw new Error(`the day cannot be planned: ${JSON.stringify(planned)}`);
  const open = () => liveTimeline(problem, planned.schedule);
  const ids = problem.activities.map(({ id }) => id);
  const day = { open, ids, repeats: REPEATS, every: 1 };
  runTaps({ ...day, count: WARM_UP_TAPS, seed: SEED + 1 });
  const taps = runTaps({ ...day, count: TAPS, seed: SEED });
  const of = (key: keyof Measured) => taps.flatMap((tap) => tap[key] ?? []);
  return {
    tasks: ids.length,
    taps: taps.length,
    passes_p99: rounded(quantile(of('passes'), 0.99)),
    touched_ratio_p99: rounded(quantile(of('touchedRatio'), 0.99)),
    touched_ratio_p50: rounded(quantile(of('touchedRatio'), 0.5)),
    p50_ms: rounded(quantile(of('ms'), 0.5)),
    p99_ms: rounded(quantile(of('ms'), 0.99)),
  };
}
