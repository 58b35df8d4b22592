import type { Instant, TaskId } from '../kernel/index.ts';
import { must, since } from '../kernel/index.ts';
import type { Timeline, Told, Update } from '../schedule/index.ts';
import { timelineAfter } from '../schedule/index.ts';
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
  const moves = movesTo(state, index, rearranged(state, index));
  const { origin, problem } = state.plan.built;
  const tell = (told: Told) => {
    for (const task of state.tasks.keys()) {
      if (index.tasks.has(task)) tellLength(told, state, task, now);
    }
    for (const task of weighed(state)) tellLength(told, state, task, now);
    tellPassages(told, new Map(), passagesOf(state), index);
    for (const stage of burning(state)) tellLength(told, state, stage, now);
    for (const stay of state.forecasts.keys()) tellForeseen(told, state, stay, now);
    tellHolds(told, state, now);
    told.notBefore(since(origin, now));
  };
  return timelineAfter(problem, state.plan.schedule, { moves, tell });
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
export function tellHolds(told: Told, state: DayState, now: Instant): Update {
  const { origin } = must(state.plan, 'a plan').built;
  const until = [...holdsOf(state)].map(
    ([task, { backAt }]) => [task, since(origin, heldUntil(backAt, now))] as const,
  );
  return told.held(new Map(until));
}

/** Tells the stages of which something is foreseen, or was before, of a load. */
export function tellForeseen(told: Told, state: DayState, stay: TaskId, now: Instant): void {
  const { tasks } = indexOf(must(state.plan, 'a plan'));
  const made = state.forecasts.get(stay) ?? [];
  const stages = new Set(made.flatMap((each) => each.stages.map(({ stage }) => stage)));
  for (const stage of stages) {
    if (tasks.has(stage)) tellLength(told, state, stage, now);
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
  told: Told,
  before: DayState,
  state: DayState,
  { event, now }: { readonly event: Event; readonly now: Instant },
): void {
  const isAir = event.kind === 'temperatureRead' && event.where.kind === 'air';
  const all = isAir || event.kind === 'slotsMoved' || event.kind.startsWith('smoker');
  for (const stage of burning(state)) {
    const isNew = passagesOf(before).get(stage)?.startedAt == null;
    if (all || isNew) tellLength(told, state, stage, now);
  }
}

/** Tells how long a task is now expected to take. */
export function tellLength(told: Told, state: DayState, task: TaskId, now: Instant): Update {
  const index = indexOf(must(state.plan, 'a plan'));
  const lengthS = expectedLengthS(state, index, task, now);
  return told.lengthIs(task, lengthS);
}

/** Tells what began and ended since, taking back what did not after all. */
export function tellPassages(
  told: Told,
  before: ReadonlyMap<TaskId, Passage>,
  now: ReadonlyMap<TaskId, Passage>,
  { plan }: PlanIndex,
): void {
  const { origin } = plan.built;
  for (const [task, is] of now) {
    const was = before.get(task);
    if (was?.startedAt === is.startedAt && was?.finishedAt === is.finishedAt) continue;
    if (was?.finishedAt != null && is.finishedAt === null) told.takenBack(task);
    if (was?.startedAt != null && is.startedAt === null) told.takenBack(task);
    if (is.startedAt !== null && is.startedAt !== was?.startedAt) {
      told.started(task, since(origin, is.startedAt));
    }
    if (is.finishedAt !== null && is.finishedAt !== was?.finishedAt) {
      told.finished(task, since(origin, is.finishedAt));
    }
  }
}
