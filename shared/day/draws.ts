import type { BatchId, Instant, Kilograms, LocalDay, LotId } from '../kernel/index.ts';
import { instant, kilograms, must, wallTime } from '../kernel/index.ts';
import type { Batch } from '../plan/index.ts';
import type { Lot } from './lot.ts';
import { passagesOf } from './passage.ts';
import { indexOf, type PlanIndex } from './plan-index.ts';
import { sentBackIn } from './sent-back.ts';
import type { DayState } from './state.ts';

/** So much of a batch is of that lot; null: nobody knows of which. */
export type Draw = {
  readonly batch: BatchId;
  readonly lot: LotId | null;
  readonly pieces: number;
  readonly weightKg: Kilograms;
  /** Whether work on the batch has begun; what has not is what is to be pulled for it. */
  readonly isBegun: boolean;
};

/**
 * Which lots each bought batch is cut from, in the order in which batches are begun: as a person
 * said, and what nobody said of goes first in, first out (common practice, no source). A lot that
 * came after the batch was begun, is past its use-by or went back goes into none by itself.
 */
export function drawsOf(state: DayState): readonly Draw[] {
  const { plan, tasks, happened } = state;
  if (!plan) return [];
  const known = found.get(tasks);
  const { lots, cutFrom } = happened;
  const back = sentBackIn(state);
  const isKnown = known?.lots === lots && known.cutFrom === cutFrom && known.plan === plan;
  if (isKnown && String([...known.back]) === String([...back])) return known.draws;
  const draws = findDraws(state, indexOf(plan), back);
  found.set(tasks, { plan, lots, cutFrom, back, draws });
  return draws;
}

type Found = Pick<DayState['happened'], 'lots' | 'cutFrom'> & {
  readonly plan: DayState['plan'];
  readonly back: ReadonlySet<LotId>;
  readonly draws: readonly Draw[];
};

/** By what was tapped, looked up by every face that shows a lot. */
const found = new WeakMap<DayState['tasks'], Found>();

type Wanted = {
  readonly batch: Batch;
  readonly at: Instant;
  readonly isBegun: boolean;
  readonly day: LocalDay;
};

function findDraws(state: DayState, index: PlanIndex, back: ReadonlySet<LotId>): Draw[] {
  const { lots, cutFrom } = state.happened;
  const left = new Map([...lots.values()].map((lot) => [lot.id, lot.leftPieces]));
  const wanted = wantedOf(state, index).map((each) => ({ ...each, open: each.batch.pieces }));
  const taken: Draw[] = [];
  const take = (want: (typeof wanted)[number], lot: Lot) => {
    const pieces = Math.min(want.open, left.get(lot.id) ?? 0);
    if (pieces <= 0) return;
    left.set(lot.id, must(left.get(lot.id), lot.id) - pieces);
    want.open -= pieces;
    taken.push({ ...drawn(want, lot.id, pieces), weightKg: weightOf(lot, pieces) });
  };
  // What a person said goes before what is only usual, whichever batch was begun first.
  for (const want of wanted) {
    const said = cutFrom.get(want.batch.id) ?? [];
    for (const lot of said.flatMap((id) => lots.get(id) ?? [])) take(want, lot);
  }
  for (const want of wanted) {
    for (const lot of lots.values()) if (!back.has(lot.id) && isUsual(lot, want)) take(want, lot);
    const { batch, open } = want;
    if (open <= 0) continue;
    const weightKg = kilograms((batch.rawKg * open) / batch.pieces);
    taken.push({ ...drawn(want, null, open), weightKg });
  }
  return taken;
}

const drawn = ({ batch, isBegun }: Wanted, lot: LotId | null, pieces: number) => ({
  ...{ batch: batch.id, lot, pieces, isBegun },
});

/** So many of its pieces weigh as much as they do on the average of their lot. */
const weightOf = ({ weightKg, pieces }: Lot, count: number) =>
  kilograms((weightKg * count) / pieces);

const isUsual = ({ cut, at, useBy }: Lot, { batch, isBegun, ...want }: Wanted) =>
  cut === batch.bought && (!isBegun || at <= want.at) && (useBy === null || want.day <= useBy);

function wantedOf(state: DayState, index: PlanIndex): Wanted[] {
  const { built, kitchen } = index.plan;
  const passages = passagesOf(state);
  const begun = new Map<BatchId, Instant>();
  const planned = new Map<BatchId, number>();
  for (const { id, batch } of built.tasks) {
    const at = passages.get(id)?.startedAt ?? null;
    if (at !== null) begun.set(batch, instant(Math.min(at, begun.get(batch) ?? at)));
    const startS = must(index.placements.get(id), id).startS;
    planned.set(batch, Math.min(startS, planned.get(batch) ?? startS));
  }
  return built.batches
    .filter(({ bought }) => bought !== null)
    .map((batch) => {
      const startMs = built.origin + 1000 * (planned.get(batch.id) ?? batch.beginByS);
      const at = begun.get(batch.id) ?? instant(startMs);
      return { batch, at, isBegun: begun.has(batch.id), day: wallTime(at, kitchen.zone).day };
    })
    .sort((a, b) => Number(b.isBegun) - Number(a.isBegun) || a.at - b.at);
}

/** When work on a batch began; null while it has not. */
export function begunAt(state: DayState, batch: BatchId): Instant | null {
  const passages = passagesOf(state);
  const tasks = state.plan?.built.tasks.filter((task) => task.batch === batch) ?? [];
  const starts = tasks.flatMap(({ id }) => passages.get(id)?.startedAt ?? []);
  return starts.length === 0 ? null : instant(Math.min(...starts));
}

/** What is left of the lots once what was begun is cut; used up or sent back, they are gone. */
export function lotsLeft(state: DayState): ReadonlyMap<LotId, Lot> {
  const { lots } = state.happened;
  if (lots.size === 0) return lots;
  const used = new Map<LotId, number>();
  for (const { lot, pieces, isBegun } of drawsOf(state)) {
    if (lot !== null && isBegun) used.set(lot, (used.get(lot) ?? 0) + pieces);
  }
  const back = sentBackIn(state);
  return new Map(
    [...lots.values()].flatMap((lot) => {
      if (back.has(lot.id)) return [];
      const leftPieces = lot.leftPieces - (used.get(lot.id) ?? 0);
      return leftPieces > 0 ? [[lot.id, { ...lot, leftPieces }] as const] : [];
    }),
  );
}
