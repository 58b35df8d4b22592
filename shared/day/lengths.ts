import type { Instant, Seconds, TaskId } from '../kernel/index.ts';
import { must, seconds } from '../kernel/index.ts';
import { modeOf, placementOf } from './arrangement.ts';
import { heavinessOf, rawWorkOf } from './delivery.ts';
import { fireLengthS } from './fire-pace.ts';
import { foreseenLengthS } from './foreseen.ts';
import { passagesOf } from './passage.ts';
import type { PlanIndex } from './plan-index.ts';
import type { DayState } from './state.ts';
import { factsOf } from './state.ts';

/**
 * How long a task is now expected to take in all. The plan's length to begin with; as pieces are
 * counted, more and more the pace that the count shows, by the share that is done; and on top what
 * the hand said it runs late. A stage of a cook of which something is foreseen takes as long as
 * that has it by the middle (P50); any other in a smoker that is down stands still at least until
 * `now`.
 */
export function expectedLengthS(
  state: DayState,
  index: PlanIndex,
  task: TaskId,
  now: Instant,
): Seconds {
  const { length } = modeOf(index, placementOf(state, index, task));
  const usualS = length.kind === 'work' ? length.typicalS : length.minS;
  const plannedS = Math.round(usualS * heavinessOfTask(state, index, task));
  const { started, counted, lateByS } = factsOf(state, task);
  const { pieces, work } = must(index.tasks.get(task), task);
  const foreseenS = work === 'fire' ? foreseenLengthS(state, index, task) : null;
  if (foreseenS !== null) return seconds(foreseenS + lateByS);
  const startedAt = work === 'fire' ? passagesOf(state).get(task)?.startedAt : null;
  if (startedAt) {
    const underFireS = fireLengthS(state, index, {
      stage: task,
      startedAt,
      plannedS: seconds(plannedS),
      now,
    });
    return seconds(underFireS + lateByS);
  }
  if (!started || !counted || counted.done === 0) return seconds(plannedS + lateByS);
  const share = counted.done / pieces;
  const paceS = (counted.at - started.at) / 1000 / share;
  return seconds(Math.round((1 - share) * plannedS + share * paceS) + lateByS);
}

/** Only what is done to raw pieces goes by their weight. */
function heavinessOfTask(state: DayState, index: PlanIndex, task: TaskId): number {
  if (state.happened.deliveries.size === 0) return 1;
  const batch = index.batches.get(must(index.tasks.get(task), task).batch);
  if (!batch || !rawWorkOf(index, batch.id).includes(task)) return 1;
  return heavinessOf(state, index, batch.bought);
}
