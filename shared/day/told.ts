import type { Instant, TaskId } from '../kernel/index.ts';
import { must, since } from '../kernel/index.ts';
import type { Timeline, Update } from '../schedule/index.ts';
import { createTimeline } from '../schedule/index.ts';
import { movesTo, rearranged } from './arrangement.ts';
import { rawWorkOf } from './delivery.ts';
import type { Event } from './event.ts';
import { heldUntil, holdsOf } from './held.ts';
import { expectedLengthS } from './lengths.ts';
import type { Passage } from './passage.ts';
import { passagesOf } from './passage.ts';
import type { PlanIndex } from './plan-index.ts';
import { indexOf } from './plan-index.ts';
import type { DayState } from './state.ts';

/** A timeline that has been told all that a state knows; null before there is a plan. */
export function timelineOf(state: DayState, now: Instant): Timeline | null {
  if (!state.plan) return null;
  const index = indexOf(state.plan);
  const timeline = createTimeline(state.plan.built.problem, state.plan.schedule);
  const moves = movesTo(state, index, rearranged(state, index));
  if (moves.length > 0) timeline.moved(moves);
  for (const task of state.tasks.keys()) {
    if (index.tasks.has(task)) tellLength(timeline, state, task, now);
  }
  for (const task of weighed(state)) tellLength(timeline, state, task, now);
  tellPassages(timeline, new Map(), passagesOf(state), index);
  for (const stage of burning(state)) tellLength(timeline, state, stage, now);
  for (const stay of state.forecasts.keys()) tellForeseen(timeline, state, stay, now);
  tellHolds(timeline, state, now);
  timeline.notBefore(since(state.plan.built.origin, now));
  // A plan of a day under way has happened in part: told fact by fact, times rise that the next
  // fact lets fall, and some hold each other up. Seen all at once they are the least there are.
  timeline.moved([]);
  return timeline;
}

/** What hands do to pieces that have been weighed as they came. */
export function weighed(state: DayState): TaskId[] {
  const index = indexOf(must(state.plan, 'a plan'));
  const { deliveries } = state.happened;
  return index.plan.built.batches
    .filter(({ bought }) => bought !== null && deliveries.has(bought))
    .flatMap(({ id }) => rawWorkOf(index, id));
}

/** Tells what is held, and till when, as far as anybody can say at `now`. */
export function tellHolds(timeline: Timeline, state: DayState, now: Instant): Update {
  const { origin } = must(state.plan, 'a plan').built;
  const until = [...holdsOf(state)].map(
    ([task, { backAt }]) => [task, since(origin, heldUntil(backAt, now))] as const,
  );
  return timeline.held(new Map(until));
}

/** Tells the stages of which something is foreseen, or was before, of a load. */
export function tellForeseen(
  timeline: Timeline,
  state: DayState,
  stay: TaskId,
  now: Instant,
): void {
  const { tasks } = indexOf(must(state.plan, 'a plan'));
  const made = state.forecasts.get(stay) ?? [];
  const stages = new Set(made.flatMap((each) => each.stages.map(({ stage }) => stage)));
  for (const stage of stages) {
    if (tasks.has(stage)) tellLength(timeline, state, stage, now);
  }
}

/** The stages of cooks that are under way. */
export function burning(state: DayState): TaskId[] {
  const { tasks } = indexOf(must(state.plan, 'a plan'));
  return [...passagesOf(state)]
    .filter(
      ([id, { startedAt, finishedAt }]) =>
        startedAt !== null && finishedAt === null && tasks.get(id)?.work === 'fire',
    )
    .map(([id]) => id);
}

/** A stage of a cook that has begun since, or whose air has been read, may take another time. */
export function tellFires(
  timeline: Timeline,
  before: DayState,
  state: DayState,
  { event, now }: { readonly event: Event; readonly now: Instant },
): void {
  const isAir = event.kind === 'temperatureRead' && event.where.kind === 'air';
  const all = isAir || event.kind === 'slotsMoved' || event.kind.startsWith('smoker');
  for (const stage of burning(state)) {
    const isNew = passagesOf(before).get(stage)?.startedAt == null;
    if (all || isNew) tellLength(timeline, state, stage, now);
  }
}

/** Tells how long a task is now expected to take. */
export function tellLength(
  timeline: Timeline,
  state: DayState,
  task: TaskId,
  now: Instant,
): Update {
  const index = indexOf(must(state.plan, 'a plan'));
  const lengthS = expectedLengthS(state, index, task, now);
  return timeline.lengthIs(task, lengthS);
}

/** Tells what began and ended since, taking back what did not after all. */
export function tellPassages(
  timeline: Timeline,
  before: ReadonlyMap<TaskId, Passage>,
  now: ReadonlyMap<TaskId, Passage>,
  { plan }: PlanIndex,
): void {
  const { origin } = plan.built;
  for (const [task, is] of now) {
    const was = before.get(task);
    if (was?.startedAt === is.startedAt && was?.finishedAt === is.finishedAt) continue;
    if (was?.finishedAt != null && is.finishedAt === null) timeline.takenBack(task);
    if (was?.startedAt != null && is.startedAt === null) timeline.takenBack(task);
    if (is.startedAt !== null && is.startedAt !== was?.startedAt) {
      timeline.started(task, since(origin, is.startedAt));
    }
    if (is.finishedAt !== null && is.finishedAt !== was?.finishedAt) {
      timeline.finished(task, since(origin, is.finishedAt));
    }
  }
}
