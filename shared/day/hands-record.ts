import { quantiles } from '../cook/index.ts';
import type { HandTimes, Pace } from '../plan/index.ts';
import { paceKey, withTimes } from '../plan/index.ts';
import { modeOf, placementOf } from './arrangement.ts';
import { passagesOf } from './passage.ts';
import { indexOf } from './plan-index.ts';
import type { DayState } from './state.ts';

/** Fewer say more of a day or two than of a kitchen (judged). */
const ENOUGH = 8;

/**
 * How long hands took for each step on the days before and on this one, once it is over. A start
 * or an end that nobody tapped teaches nothing.
 */
export function handTimesAfter(state: DayState): readonly HandTimes[] {
  const { plan, handTimes } = state;
  if (!plan) return handTimes;
  const index = indexOf(plan);
  const passages = passagesOf(state);
  const planned = new Map((plan.paces ?? []).map((pace) => [paceKey(pace), pace.typical]));
  const found = plan.built.tasks.flatMap(({ id, batch: of, step, work }) => {
    const batch = index.batches.get(of);
    const { startedAt = null, finishedAt = null } = passages.get(id) ?? {};
    if (work !== 'hands' || !batch || startedAt === null || finishedAt === null) return [];
    const { length } = modeOf(index, placementOf(state, index, id));
    if (length.kind !== 'work' || length.typicalS <= 0) return [];
    const { route } = batch;
    // What was planned is this kitchen's pace already: the share is of what the catalogue has.
    const asWritten = length.typicalS / (planned.get(paceKey({ route, step })) ?? 1);
    return [
      { route, step, ratio: (finishedAt - startedAt) / 1000 / asWritten, endedAt: finishedAt },
    ];
  });
  return withTimes(
    handTimes,
    found.sort((a, b) => a.endedAt - b.endedAt),
  );
}

/** The pace of each step that was done often enough to know it. */
export const pacesOf = (times: readonly HandTimes[]): readonly Pace[] =>
  times
    .filter(({ ratios }) => ratios.length >= ENOUGH)
    .map(({ route, step, ratios }) => {
      const [low = 1, typical = 1, high = 1] = quantiles(ratios, [0.1, 0.5, 0.9]);
      return { route, step, times: ratios.length, low, typical, high };
    });
