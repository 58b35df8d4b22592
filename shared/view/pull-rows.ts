import type { Command, Live } from '../day/index.ts';
import { begunAt, deliveryEffect } from '../day/index.ts';
import type { Instant, Kilograms, Seconds, Text } from '../kernel/index.ts';
import { instant, kilograms, seconds } from '../kernel/index.ts';
import type { PullLine } from '../plan/index.ts';

/** A line of the pull list, and what has come of it. */
export type PullRow = Omit<PullLine, 'byS'> & {
  /** When the first still in the cooler is needed; of what is all out, when the first was. */
  readonly byAt: Instant;
  /** Pieces of batches that hands have begun: nobody works on what is not out. */
  readonly outPieces: number;
  /** When the last of them was taken up; null where none is out. */
  readonly outAt: Instant | null;
  readonly came: Came | null;
};

export type Came = {
  readonly pieces: number;
  readonly weightKg: Kilograms;
  readonly at: Instant;
  /** Portions that can no longer be given, and longer trimming; null till the hub has said. */
  readonly effect: {
    readonly lost: readonly { readonly batch: Text; readonly portions: number }[];
    readonly longerS: Seconds;
  } | null;
};

/** The pull list by when its lines are needed; what is out already comes last. */
export function pullRows(live: Live): PullRow[] {
  return live.index.plan.built.pull
    .map(({ byS, ...line }): PullRow => {
      const came = live.state.happened.deliveries.get(line.cut) ?? null;
      return {
        ...line,
        byAt: live.instantOf(byS),
        ...outOf(live, line),
        came: came && {
          pieces: came.pieces,
          weightKg: came.weightKg,
          at: came.at,
          effect: effectOf(live, line),
        },
      };
    })
    .sort((a, b) => Number(isOut(a)) - Number(isOut(b)) || a.byAt - b.byAt);
}

/** Whether nothing of it is still to be taken out. */
export const isOut = ({ pieces, outPieces }: Pick<PullRow, 'pieces' | 'outPieces'>): boolean =>
  outPieces >= pieces;

function outOf(live: Live, { cut }: Pick<PullLine, 'cut'>) {
  const { state, index } = live;
  const batches = index.plan.built.batches
    .filter(({ bought }) => bought === cut)
    .map((batch) => ({ ...batch, begunAt: begunAt(state, batch.id) }));
  const begun = batches.flatMap(({ begunAt: at, pieces }) => (at === null ? [] : [{ at, pieces }]));
  const still = batches.filter(({ begunAt: at }) => at === null).map(({ beginByS }) => beginByS);
  return {
    ...(still.length > 0 ? { byAt: live.instantOf(seconds(Math.min(...still))) } : {}),
    outPieces: begun.reduce((sum, { pieces }) => sum + pieces, 0),
    outAt: begun.length > 0 ? instant(Math.max(...begun.map(({ at }) => at))) : null,
  };
}

function effectOf({ state, index }: Live, { cut }: Pick<PullLine, 'cut'>): Came['effect'] {
  const effect = deliveryEffect(state, index, cut);
  return (
    effect && {
      longerS: effect.longerS,
      lost: effect.lost.flatMap(({ batch, portions }) => {
        const found = index.batches.get(batch);
        return found ? [{ batch: found.name, portions }] : [];
      }),
    }
  );
}

/** What was typed of a delivery; what was not follows from the list, pieces of the same weight. */
export function deliveryTyped(
  line: Pick<PullRow, 'pieces' | 'weightKg'>,
  { pieces, weightKg }: { readonly pieces: number | null; readonly weightKg: Kilograms | null },
): Pick<Came, 'pieces' | 'weightKg'> {
  const came = pieces ?? line.pieces;
  return {
    pieces: came,
    weightKg: weightKg ?? kilograms((line.weightKg * came) / line.pieces),
  };
}

type Delivery = Extract<Command, { kind: 'delivery' }>;

/** The list with one more delivery of this screen over it; what it moves only the hub can tell. */
export function layDelivery(
  pull: readonly PullRow[],
  { cut, pieces, weightKg, tappedAt: at }: Delivery,
): readonly PullRow[] {
  const came = { pieces, weightKg, at, effect: null };
  return pull.map((row) => (row.cut === cut ? { ...row, came } : row));
}
