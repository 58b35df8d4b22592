import {
  type DayState,
  drawsOf,
  labelFacts,
  mayHaveFed,
  passagesOf,
  thrownShare,
  tubKey,
} from '../day/index.ts';
import type { BatchId, Instant, Kilograms, PersonId } from '../kernel/index.ts';
import { instant, kilograms, must } from '../kernel/index.ts';
import type { Batch, BuiltDay } from '../plan/index.ts';
import { personIn } from './person-in.ts';
import type { BatchFlow, FlowLabel, Source, TubFlow } from './record.ts';

/** A tub of a batch that was begun, with what nobody has been made of yet. */
type Tub = Omit<TubFlow, 'to'> & {
  readonly of: BatchId;
  readonly leftAtMs: number;
  leftKg: number;
  readonly to: { batch: BatchId; weightKg: Kilograms }[];
};

type Way = { readonly from: readonly Source[]; readonly inKg: number };

/** Less than this of anything is a rounding. */
const DUST_KG = 1e-9;

/**
 * The way of the weight through every batch that was begun. What is made of trim takes the tubs
 * that were filled first, as its plan does.
 */
export function flowsOf(state: DayState): readonly BatchFlow[] {
  const { plan } = state;
  if (!plan) return [];
  const { built } = plan;
  const begun = begunBatches(state);
  const batches = built.batches.filter(({ id }) => begun.has(id));
  const bought = new Map(batches.map((batch) => [batch.id, boughtFor(state, batch)]));
  const ways = new Map<BatchId, Way>();
  const tubs: Tub[] = [];
  // Only what is made of trim waits for others: so those first that are bought.
  const inOrder = [...batches].sort(
    (a, b) => Number(a.bought === null) - Number(b.bought === null),
  );
  for (const batch of inOrder) {
    const from =
      batch.bought === null ? takenFor(state, batch, tubs) : must(bought.get(batch.id), batch.id);
    const inKg = from.reduce((sum, { weightKg }) => sum + weightKg, 0);
    ways.set(batch.id, { from, inKg });
    const leftAtMs = must(begun.get(batch.id), batch.id);
    tubs.push(...tubsOf(built, { batch, weighed: state.happened.tubs }, { inKg, leftAtMs }));
  }
  return batches.map((batch) => {
    const own = tubs.filter(({ of }) => of === batch.id);
    return flowOf(state, batch, { ...must(ways.get(batch.id), batch.id), tubs: own, begun });
  });
}

function begunBatches(state: DayState): ReadonlyMap<BatchId, Instant> {
  const passages = passagesOf(state);
  const begun = new Map<BatchId, Instant>();
  for (const { id, batch } of state.plan?.built.tasks ?? []) {
    const at = passages.get(id)?.startedAt ?? null;
    if (at !== null) begun.set(batch, instant(Math.min(at, begun.get(batch) ?? at)));
  }
  return begun;
}

const boughtFor = (state: DayState, { id }: Batch): Source[] =>
  drawsOf(state)
    .filter(({ batch }) => batch === id)
    .map(({ lot, pieces, weightKg }) => ({ lot, of: null, pieces, weightKg }));

function takenFor({ plan }: DayState, batch: Batch, tubs: readonly Tub[]): Source[] {
  const cut = plan?.catalogue.cuts.find(({ id }) => id === batch.cut);
  const cutOf = new Map(plan?.built.batches.map((each) => [each.id, each.cut]));
  const mayUse = (tub: Tub) =>
    cut?.takenFrom?.some((taken) => taken.cut === cutOf.get(tub.of) && taken.tub === tub.tub);
  const taken: Source[] = [];
  let openKg: number = batch.rawKg;
  const pieces = (weightKg: number) => (batch.pieces * weightKg) / batch.rawKg;
  for (const tub of tubs.filter(mayUse).sort((a, b) => a.leftAtMs - b.leftAtMs)) {
    const weightKg = kilograms(Math.min(openKg, tub.leftKg));
    if (weightKg <= DUST_KG) continue;
    tub.leftKg -= weightKg;
    openKg -= weightKg;
    tub.to.push({ batch: batch.id, weightKg });
    taken.push({ lot: null, of: tub.of, pieces: pieces(weightKg), weightKg });
  }
  if (openKg <= DUST_KG) return taken;
  const weightKg = kilograms(openKg);
  return [...taken, { lot: null, of: null, pieces: pieces(openKg), weightKg }];
}

/** What the plan has a batch leave, for the weight that it had; never more than it loses. */
function tubsOf(
  { tubs }: BuiltDay,
  { batch, weighed }: { readonly batch: Batch; readonly weighed: DayState['happened']['tubs'] },
  { inKg, leftAtMs }: { readonly inKg: number; readonly leftAtMs: number },
): Tub[] {
  const own = tubs.filter((tub) => tub.batch === batch.id);
  const plannedKg = own.reduce((sum, { weightKg }) => sum + weightKg, 0);
  const room = plannedKg > 0 ? (batch.rawKg - batch.trimmedKg) / plannedKg : 1;
  const scale = (inKg / batch.rawKg) * Math.max(0, Math.min(1, room));
  let roomKg = inKg;
  return own.map(({ tub, name, goes, weightKg: asPlannedKg }) => {
    const shown = weighed.get(tubKey(batch.id, tub))?.weightKg;
    const weightKg = kilograms(Math.min(roomKg, shown ?? asPlannedKg * scale));
    roomKg -= weightKg;
    const isWeighed = shown !== undefined;
    return {
      of: batch.id,
      tub,
      name,
      goes,
      weightKg,
      isWeighed,
      leftAtMs,
      leftKg: weightKg,
      to: [],
    };
  });
}

/**
 * What goes on from the trim table. Where tubs were weighed, more in them is less on the pieces;
 * what is neither, such as what sticks to the board, stays as it is reckoned.
 */
function trimmedKg(batch: Batch, inKg: number, tubs: readonly Tub[], reckonedTubKg: number) {
  const reckonedKg = (batch.trimmedKg * inKg) / batch.rawKg;
  if (!tubs.some(({ isWeighed }) => isWeighed)) return reckonedKg;
  const lossKg = Math.max(0, inKg - reckonedKg - reckonedTubKg);
  const tubKg = tubs.reduce((sum, { weightKg }) => sum + weightKg, 0);
  return Math.max(0, inKg - tubKg - Math.min(lossKg, inKg - tubKg));
}

function flowOf(
  state: DayState,
  batch: Batch,
  {
    from,
    inKg,
    tubs,
    begun,
  }: Way & {
    readonly tubs: readonly Tub[];
    readonly begun: ReadonlyMap<BatchId, Instant>;
  },
): BatchFlow {
  const tubKg = tubs.reduce((sum, { weightKg }) => sum + weightKg, 0);
  const built = must(state.plan, 'a plan').built;
  const asReckoned = tubsOf(built, { batch, weighed: new Map() }, { inKg, leftAtMs: 0 });
  const reckonedTubKg = asReckoned.reduce((sum, { weightKg }) => sum + weightKg, 0);
  const goesOnKg = trimmedKg(batch, inKg, tubs, reckonedTubKg);
  const scale = goesOnKg / batch.trimmedKg;
  const platedKg = batch.servedKg * scale;
  const carriedKg = state.happened.carried.get(batch.id) ?? null;
  const keptKg = Math.min(carriedKg ?? 0, platedKg);
  const thrownKg = Math.min(platedKg * thrownShare(state, batch.id), platedKg - keptKg);
  const dish = state.plan?.catalogue.dishes.find(({ id }) => id === batch.dish);
  return {
    ...{ batch: batch.id, name: batch.name, dish: batch.dish, service: batch.service },
    dishName: dish?.name ?? { en: batch.dish },
    begunAt: must(begun.get(batch.id), batch.id),
    from,
    inKg: kilograms(inKg),
    tubs: tubs.map(({ tub, name, goes, weightKg, isWeighed = false, to }) => ({
      ...{ tub, name, goes, weightKg, isWeighed, to },
    })),
    lossKg: {
      trim: kilograms(Math.max(0, inKg - goesOnKg - tubKg)),
      cook: kilograms((batch.trimmedKg - batch.cookedKg) * scale),
      carve: kilograms((batch.cookedKg - batch.servedKg) * scale),
    },
    servedKg: kilograms(platedKg - keptKg - thrownKg),
    keptKg: kilograms(keptKg),
    isThrownOut: carriedKg === 0 || thrownKg > 0,
    thrownKg: kilograms(thrownKg),
    ...(mayHaveFed(state, batch.id) && { mayHaveFed: true as const }),
    label: labelOf(state, batch.id),
  };
}

function labelOf(state: DayState, id: BatchId): FlowLabel {
  const { begunBy, stands, kept, ...facts } = labelFacts(state, id);
  const named = (by: PersonId | null) => state.plan && personIn(state, by);
  return {
    ...facts,
    begunBy: named(begunBy),
    stands: stands && { ...stands, by: named(stands.by) },
    kept: kept && { ...kept, by: named(kept.by) },
  };
}
