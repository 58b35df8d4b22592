import type { BatchId, CutId, DishId, Seconds, TaskId } from '../kernel/index.ts';
import { must, seconds } from '../kernel/index.ts';
import type { PlanIndex } from './plan-index.ts';
import type { DayState } from './state.ts';

/** What a delivery does to the day, against the line of the pull list that it was for. */
export type DeliveryEffect = {
  /** Pieces that did not come; nought where all did. */
  readonly shortPieces: number;
  /** Portions that can no longer be given, from the batch that is needed last. */
  readonly lost: readonly {
    readonly batch: BatchId;
    readonly dish: DishId;
    readonly portions: number;
  }[];
  /** How much longer all that hands do to the raw pieces takes, heavier as they are. */
  readonly longerS: Seconds;
};

/** What came of a cut against what was to come; null while nothing was said of it. */
export function deliveryEffect(
  state: DayState,
  index: PlanIndex,
  cut: CutId,
): DeliveryEffect | null {
  const came = state.happened.deliveries.get(cut);
  const line = index.plan.built.pull.find((each) => each.cut === cut);
  if (!came || !line) return null;
  const shortPieces = Math.max(0, line.pieces - came.pieces);
  // Light pieces are short as well, though every one of them came.
  let missing = Math.max(shortPieces, line.pieces * (1 - came.weightKg / line.weightKg));
  const batches = index.plan.built.batches
    .filter(({ bought }) => bought === cut)
    .sort((a, b) => b.neededS - a.neededS);
  const lost = batches.flatMap(({ id, dish, pieces, portions }) => {
    const gone = Math.min(pieces, Math.max(0, missing));
    missing -= gone;
    const fewer = Math.ceil((portions * gone) / pieces - 1e-9);
    return fewer > 0 ? [{ batch: id, dish, portions: fewer }] : [];
  });
  const plannedS = batches.flatMap(({ id }) => rawWorkOf(index, id).map((task) => lengthS(task)));
  const longerS =
    plannedS.reduce((sum, each) => sum + each, 0) * (heavinessOf(state, index, cut) - 1);
  return { shortPieces, lost, longerS: seconds(Math.round(longerS)) };

  function lengthS(task: TaskId): number {
    const { startS, endS } = must(index.placements.get(task), task);
    return endS - startS;
  }
}

/**
 * How much heavier a piece is than planned, and so how much longer a knife takes to it (common
 * practice, no source); 1 where it is not heavier, and before it came.
 */
export function heavinessOf(state: DayState, index: PlanIndex, cut: CutId | null): number {
  const came = cut === null ? undefined : state.happened.deliveries.get(cut);
  const line = index.plan.built.pull.find((each) => each.cut === cut);
  if (!came || !line || came.pieces === 0) return 1;
  return Math.max(1, came.weightKg / came.pieces / (line.weightKg / line.pieces));
}

/** What hands do to the pieces of a batch before they go into the fire. */
export function rawWorkOf(index: PlanIndex, batch: BatchId): TaskId[] {
  const own = [...index.tasks.values()].filter((task) => task.batch === batch);
  const startOf = (id: TaskId) => must(index.placements.get(id), id).startS;
  const stays = own.filter(({ work }) => work === 'place').map(({ id }) => startOf(id));
  const loadedS = Math.min(...stays);
  return own
    .filter(({ id, work, pieces }) => work === 'hands' && pieces > 0 && startOf(id) < loadedS)
    .map(({ id }) => id);
}

/** Whole pieces that came of each cut, as heavy as planned, where anybody said. */
export function cameOf({ happened }: DayState, index: PlanIndex): Map<CutId, number> {
  return new Map(
    [...happened.deliveries].map(([cut, { pieces, weightKg }]) => {
      const line = index.plan.built.pull.find((each) => each.cut === cut);
      const heavy = line ? (weightKg * line.pieces) / line.weightKg : pieces;
      return [cut, Math.min(pieces, Math.floor(heavy + 1e-9))];
    }),
  );
}
