import type { Instant, Seconds, SmokerId, TaskId } from '../kernel/index.ts';
import { must, seconds } from '../kernel/index.ts';
import { findSlot } from '../kitchen/index.ts';
import type { ForeseenStage } from './adopted-forecast.ts';
import { loadsOf, modeOf, placementOf } from './arrangement.ts';
import { type Chance, type Doubt, valueAt } from './chances.ts';
import { type Foreseen, foreseenLoads, LONGEST_S, SHORTEST_S } from './foreseen.ts';
import { expectedLengthS } from './lengths.ts';
import { passagesOf } from './passage.ts';
import type { PlanIndex } from './plan-index.ts';
import type { DayState } from './state.ts';
import { factsOf } from './state.ts';

/**
 * What a load of which nothing is foreseen has in common with others in its smoker: about what
 * forecasts of ours say of a whole cook before its stall (measured on them, no other source).
 */
const USUAL_OF_SMOKER = 1 / 3;

/** A stage of a cook that is not over, and how long it takes in one case or another. */
export type FireDoubt = {
  readonly stage: TaskId;
  /** What it hangs on: each load that is foreseen, or the batch as a whole. */
  readonly chances: readonly Chance[];
  /** In all, given the normal score of each of these. */
  readonly lengthS: (scoreOf: (name: string) => number) => Seconds;
};

/** The stages that are yet to end, by what is foreseen of them, else by the catalogue's ranges. */
export function fireDoubts(state: DayState, index: PlanIndex, now: Instant): FireDoubt[] {
  const passages = passagesOf(state);
  return [...index.tasks.values()]
    .filter(({ id, work }) => work === 'fire' && passages.get(id)?.finishedAt == null)
    .flatMap(({ id }) => {
      const loads = foreseenLoads(state, index, id);
      return loads.length > 0
        ? [ofForecasts(state, index, id, loads)]
        : ofCatalogue(state, index, id, now);
    });
}

function ofForecasts(
  state: DayState,
  index: PlanIndex,
  stage: TaskId,
  loads: readonly Foreseen[],
): FireDoubt {
  const passages = passagesOf(state);
  const began = passages.get(stage)?.startedAt ?? null;
  return {
    stage,
    chances: loads.map(({ stay, ofSmoker = USUAL_OF_SMOKER }) => {
      return { name: stay, smoker: smokerOf(state, index, stay), ofSmoker };
    }),
    lengthS: (scoreOf) => {
      const ends = loads.map((load) => {
        const endOf = (of: ForeseenStage) => endAt(of, load.madeAt, scoreOf(load.stay));
        return { load, end: endOf(load), endOf };
      });
      const slowest = ends.reduce((a, b) => (b.end > a.end ? b : a));
      const { before } = slowest.load;
      const over = before && passages.get(before.stage)?.finishedAt;
      const from = began ?? over ?? (before ? slowest.endOf(before) : slowest.load.madeAt);
      return atLeast((slowest.end - from) / 1000 + factsOf(state, stage).lateByS);
    },
  };
}

/** When a stage ends at such a score; never is as far as the model looks. */
function endAt({ p10At, p50At, p90At, never }: ForeseenStage, madeAt: Instant, score: number) {
  const furthest = madeAt + LONGEST_S * 1000;
  const middle = p50At ?? furthest;
  const low = p10At ?? middle;
  const at = valueAt({ low, middle, high: p90At ?? 2 * middle - low, never }, score);
  return Math.min(at, furthest);
}

function ofCatalogue(state: DayState, index: PlanIndex, stage: TaskId, now: Instant): FireDoubt[] {
  const { length } = modeOf(index, placementOf(state, index, stage));
  if (length.kind !== 'work') return [];
  const { batch } = must(index.tasks.get(stage), stage);
  const expectedS = expectedLengthS(state, index, stage, now);
  const doubt: Doubt = {
    low: length.lowS / length.typicalS,
    middle: 1,
    high: length.highS / length.typicalS,
    never: 0,
  };
  const stay = [...index.tasks.values()].find(
    (task) => task.work === 'place' && task.batch === batch,
  );
  const smoker = stay ? smokerOf(state, index, stay.id) : null;
  return [
    {
      stage,
      chances: [{ name: batch, smoker, ofSmoker: USUAL_OF_SMOKER }],
      lengthS: (scoreOf) => atLeast(expectedS * valueAt(doubt, scoreOf(batch))),
    },
  ];
}

const atLeast = (lengthS: number) => seconds(Math.max(SHORTEST_S, Math.round(lengthS)));

function smokerOf(state: DayState, index: PlanIndex, stay: TaskId): SmokerId | null {
  const slot = loadsOf(state, index, stay)[0]?.slot;
  return slot ? (findSlot(index.plan.kitchen, slot)?.smoker.id ?? null) : null;
}
