import type { CutPrior, WrapName } from '../cook/index.ts';
import { cutPriors } from '../cook/index.ts';
import type { Celsius, Instant, Metres, SlotId, TaskId } from '../kernel/index.ts';
import { must } from '../kernel/index.ts';
import type { Task } from '../plan/index.ts';
import { loadsOf } from './arrangement.ts';
import { passagesOf } from './passage.ts';
import type { PlanIndex } from './plan-index.ts';
import { indexOf, stepsOf } from './plan-index.ts';
import type { DayState } from './state.ts';
import { slotsOf } from './whereabouts.ts';

/** A load in the fire, as far as a forecast of its cook has to know. */
export type Cooking = {
  readonly stay: TaskId;
  readonly startedAt: Instant;
  readonly cut: CutPrior;
  readonly thicknessM: Metres;
  readonly widthM: Metres;
  readonly lengthM: Metres;
  readonly setC: Celsius;
  /** Stages of the fire in their order, each with what its check must find. */
  readonly stages: readonly CookingStage[];
  /** The slots that it has been in, the first from the beginning on. */
  readonly slots: readonly { readonly at: Instant; readonly slot: SlotId }[];
};

export type CookingStage = {
  readonly stage: TaskId;
  readonly tempC: Celsius;
  readonly finishedAt: Instant | null;
  /** What is put round it between this stage and the next. */
  readonly wrap: WrapName;
};

/** The stages of a load's cook, whether it is in or waits; none where its cut is not foreseen. */
export function cookStagesOf(state: DayState, index: PlanIndex, stay: TaskId): CookingStage[] {
  const task = must(index.tasks.get(stay), stay);
  const within = stepsWithin(index, task);
  return within ? stagesAmong(state, index, within) : [];
}

/** A load that is in the fire now; null for any other, and where a cut is not known so well. */
export function cookingOf(state: DayState, index: PlanIndex, stay: TaskId): Cooking | null {
  const task = index.tasks.get(stay);
  if (task?.work !== 'place') return null;
  const passage = passagesOf(state).get(stay);
  const cut = cutOf(index, task);
  const within = stepsWithin(index, task);
  if (passage?.startedAt == null || passage.finishedAt !== null || !cut?.cooks || !within)
    return null;
  const stages = stagesAmong(state, index, within);
  const first = stages[0];
  const startedAt = first && passagesOf(state).get(first.stage)?.startedAt;
  if (startedAt == null) return null;
  const { like, thicknessM } = cut.cooks;
  return {
    ...{ stay, startedAt, stages, cut: cutPriors[like], thicknessM },
    widthM: cut.footprint.widthM,
    lengthM: cut.footprint.lengthM,
    setC: within.setC,
    slots: slotsOf(state, index, stay, startedAt),
  };
}

/** The load that is in a slot now; null where none is. */
export function stayIn(state: DayState, slot: SlotId): TaskId | null {
  if (!state.plan) return null;
  const index = indexOf(state.plan);
  const found = [...passagesOf(state)].find(
    ([id, { startedAt, finishedAt }]) =>
      startedAt !== null &&
      finishedAt === null &&
      loadsOf(state, index, id).some((load) => load.slot === slot),
  );
  return found?.[0] ?? null;
}

function cutOf(index: PlanIndex, { batch }: Task) {
  const id = index.batches.get(batch)?.cut;
  return index.plan.catalogue.cuts.find((cut) => cut.id === id);
}

type Within = { readonly tasks: readonly Task[]; readonly setC: Celsius };

/** What is done to a batch from its loading to its taking off; null for what lies there in pans. */
function stepsWithin(index: PlanIndex, { batch, step }: Task): Within | null {
  const steps = stepsOf(index, batch);
  const stay = steps.find(({ id }) => id === step);
  if (stay?.work !== 'place' || stay.pans) return null;
  const order = steps.map(({ id }) => id);
  const [from, to] = [stay.spans.from.step, stay.spans.to.step].map((id) => order.indexOf(id));
  const tasks = [...index.tasks.values()]
    .filter((task) => task.batch === batch && task.work !== 'place')
    .map((task) => ({ task, place: order.indexOf(task.step) }))
    .filter(({ place }) => must(from, step) <= place && place <= must(to, step))
    .sort((a, b) => a.place - b.place);
  return { tasks: tasks.map(({ task }) => task), setC: stay.setC };
}

function stagesAmong(state: DayState, index: PlanIndex, { tasks }: Within): CookingStage[] {
  return tasks.flatMap(({ id, work }, place): CookingStage[] => {
    if (work !== 'fire') return [];
    const rest = tasks.slice(place + 1);
    const next = rest.findIndex((task) => task.work === 'fire');
    const after = next < 0 ? rest : rest.slice(0, next);
    const tempC = after.find(({ check }) => check?.coreAtLeastC !== undefined)?.check?.coreAtLeastC;
    if (tempC === undefined) return [];
    const wraps = after.map((task) => wrapOf(index, task)).find((wrap) => wrap !== null);
    const finishedAt = passagesOf(state).get(id)?.finishedAt ?? null;
    return [{ stage: id, tempC, finishedAt, wrap: wraps ?? 'none' }];
  });
}

function wrapOf(index: PlanIndex, { batch, step }: Task): WrapName | null {
  const found = stepsOf(index, batch).find(({ id }) => id === step);
  return found?.work === 'hands' ? (found.wraps ?? null) : null;
}
