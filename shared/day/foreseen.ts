import type { Instant, Seconds, TaskId } from '../kernel/index.ts';
import { after, hours, must, seconds, since } from '../kernel/index.ts';
import { findSlot } from '../kitchen/index.ts';
import type { AdoptedForecast, ForeseenStage } from './adopted-forecast.ts';
import { passagesOf } from './passage.ts';
import type { PlanIndex } from './plan-index.ts';
import type { DayState } from './state.ts';
import { slotsOf } from './whereabouts.ts';

/** The forecast of a load that stands; null where there is none. */
export function forecastOf(state: DayState, stay: TaskId): AdoptedForecast | null {
  const last = state.forecasts.get(stay)?.at(-1) ?? null;
  return last && last.stages.length > 0 ? last : null;
}

/** A stage as it is foreseen of a load, with the stage before it in the same smoker. */
export type Foreseen = ForeseenStage & {
  readonly stay: TaskId;
  readonly p50At: Instant;
  readonly madeAt: Instant;
  readonly before: ForeseenStage | null;
};

/** What is foreseen of a stage of each load of its batch; nothing of a fire that was down since. */
export function foreseenLoads(state: DayState, index: PlanIndex, stage: TaskId): Foreseen[] {
  const { batch } = must(index.tasks.get(stage), stage);
  return [...state.forecasts.keys()].flatMap((stay) => {
    const made = index.tasks.get(stay)?.batch === batch ? forecastOf(state, stay) : null;
    if (!made || wentOut(state, index, made)) return [];
    const place = made.stages.findIndex((each) => each.stage === stage);
    const found = made.stages[place];
    if (!found?.p50At) return [];
    const { madeAt } = made;
    const before = made.stages[place - 1] ?? null;
    return [{ ...found, stay, p50At: found.p50At, madeAt, before }];
  });
}

/** Of its loads the slowest, since hands go to all of them together; null where none is known. */
function foreseenStage(state: DayState, index: PlanIndex, stage: TaskId): Foreseen | null {
  const [first, ...others] = foreseenLoads(state, index, stage);
  if (!first) return null;
  return others.reduce((slowest, each) => (each.p50At > slowest.p50At ? each : slowest), first);
}

/**
 * No piece cooks on without a fire, whatever was foreseen before it went out; not even one that was
 * moved to another since.
 */
function wentOut(state: DayState, index: PlanIndex, { stay, madeAt }: AdoptedForecast): boolean {
  if (!state.happened.spells.some(({ kind }) => kind === 'down')) return false;
  return slotsOf(state, index, stay, madeAt).some(({ at, slot }, i, all) => {
    const smoker = findSlot(index.plan.kitchen, slot)?.smoker.id;
    const leftAt = all[i + 1]?.at ?? Number.POSITIVE_INFINITY;
    return state.happened.spells.some(
      (each) =>
        each.smoker === smoker &&
        each.kind === 'down' &&
        each.from < leftAt &&
        (each.until === null || each.until > at),
    );
  });
}

/** The shortest that is left of a stage, whatever is foreseen: hands come no faster. */
export const SHORTEST_S = seconds(60);

/** How long a stage takes in all by what is foreseen; null where nothing is. */
export function foreseenLengthS(state: DayState, index: PlanIndex, stage: TaskId): Seconds | null {
  const found = foreseenStage(state, index, stage);
  if (!found) return null;
  const passages = passagesOf(state);
  const { before } = found;
  const beganAt =
    passages.get(stage)?.startedAt ??
    (before && (passages.get(before.stage)?.finishedAt ?? before.p50At));
  if (beganAt == null) return null;
  return seconds(Math.max(SHORTEST_S, since(beganAt, found.p50At)));
}

/** Where one in ten never comes to its end: so far ahead the model looks. */
export const LONGEST_S = hours(36);

/**
 * In which a stage is foreseen to end: its check is called at the beginning (P10), and it is likely
 * over at the end of it (P90). `endS`, as the day has it, lies between. Null where none is known.
 */
export function foreseenRange(
  state: DayState,
  index: PlanIndex,
  { task, endS, now }: { readonly task: TaskId; readonly endS: Seconds; readonly now: Instant },
): { readonly lowS: Seconds; readonly highS: Seconds } | null {
  if (must(index.tasks.get(task), task).work !== 'fire') return null;
  const found = foreseenStage(state, index, task);
  if (!found) return null;
  const ofDay = (at: Instant) => since(index.plan.built.origin, at);
  const { p10At, p50At, p90At, madeAt } = found;
  return {
    lowS: seconds(Math.min(Math.max(ofDay(p10At ?? p50At), ofDay(now)), endS)),
    highS: seconds(Math.max(ofDay(p90At ?? after(madeAt, LONGEST_S)), endS)),
  };
}
