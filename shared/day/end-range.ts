import type { Instant, Seconds, TaskId } from '../kernel/index.ts';
import { seconds, since } from '../kernel/index.ts';
import type { Timeline } from '../schedule/index.ts';
import { modeOf, placementOf } from './arrangement.ts';
import { foreseenRange } from './foreseen.ts';
import type { PlanIndex } from './plan-index.ts';
import type { DayState } from './state.ts';

type Then = { readonly state: DayState; readonly index: PlanIndex; readonly now: Instant };

/**
 * The doubt of a task's end, from the spread of its length, or from what is foreseen of it; none
 * for what is done. In seconds of the plan.
 */
export function endRangeOn(
  timeline: Pick<Timeline, 'times'>,
  { state, index, now }: Then,
  task: TaskId,
): { readonly lowS: Seconds; readonly highS: Seconds } {
  const { stage, startS, endS } = timeline.times(task);
  const { length } = modeOf(index, placementOf(state, index, task));
  if (stage === 'done' || length.kind === 'wait') return { lowS: endS, highS: endS };
  const foreseen = foreseenRange(state, index, { task, endS, now });
  if (foreseen) return foreseen;
  const notBeforeS = stage === 'running' ? since(index.plan.built.origin, now) : startS;
  const lasting = (lengthS: Seconds) => {
    const share = (endS - startS) * (lengthS / length.typicalS);
    return seconds(Math.max(startS + Math.round(share), notBeforeS));
  };
  return { lowS: lasting(length.lowS), highS: lasting(length.highS) };
}
