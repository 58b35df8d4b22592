/**
 * A stretch of a service that one batch feeds, in quarters of an hour from the opening: half-open.
 */
export type Stretch = {
  readonly fromQuarter: number;
  readonly toQuarter: number;
  readonly portions: number;
  readonly pieces: number;
};

type Limits = {
  /** Whole pieces that so many portions ask for. */
  readonly piecesFor: (portions: number) => number;
  readonly mostPieces: number;
  /** How long a batch of so many pieces may sell. */
  readonly mostQuarters: (pieces: number) => number;
};

type Split = { readonly stretches: readonly Stretch[]; readonly largest: number };

/**
 * Shares a service out among batches: as few as the limits allow, and of those splits the one whose
 * largest batch is smallest. Each batch feeds a stretch of its own, so that none is asked to stand
 * longer than it may. A single quarter that asks for more than one batch can be gets several at
 * once.
 */
export function splitService(demand: readonly number[], limits: Limits): Stretch[] {
  const last = demand.findLastIndex((portions) => portions > 0);
  const best: Split[] = [{ stretches: [], largest: 0 }];
  for (let to = 1; to <= last + 1; to++) {
    const splits = best.flatMap((before, from) => {
      const stretches = stretchesOf(demand, from, to, limits);
      return stretches ? [joined(before, stretches)] : [];
    });
    best.push(splits.reduce(better));
  }
  return readyAtOpening(best.at(-1)?.stretches ?? [], limits);
}

function stretchesOf(
  demand: readonly number[],
  fromQuarter: number,
  toQuarter: number,
  { piecesFor, mostPieces, mostQuarters }: Limits,
): Stretch[] | null {
  const portions = demand.slice(fromQuarter, toQuarter).reduce((a, b) => a + b, 0);
  if (portions === 0) return [];
  const pieces = piecesFor(portions);
  const count = Math.ceil(pieces / mostPieces);
  const isLong = toQuarter - fromQuarter > 1;
  if (isLong && (count > 1 || toQuarter - fromQuarter > mostQuarters(pieces))) return null;
  return evenly(portions, count).map((share) => ({
    fromQuarter,
    toQuarter,
    portions: share,
    pieces: piecesFor(share),
  }));
}

/** Whole shares that differ by one at most. @example evenly(7, 3) //=> [3, 2, 2] */
export function evenly(total: number, count: number): number[] {
  return Array.from({ length: count }, (_, n) => Math.floor((total + count - 1 - n) / count));
}

function joined(before: Split, stretches: readonly Stretch[]): Split {
  return {
    stretches: [...before.stretches, ...stretches],
    largest: Math.max(before.largest, ...stretches.map(({ pieces }) => pieces)),
  };
}

function better(a: Split, b: Split): Split {
  const fewer = a.stretches.length - b.stretches.length || a.largest - b.largest;
  return fewer <= 0 ? a : b;
}

/**
 * The first batch stands ready when the doors open, also where the first portion sells a little
 * later.
 */
function readyAtOpening(stretches: readonly Stretch[], { mostQuarters }: Limits): Stretch[] {
  const first = stretches[0]?.fromQuarter;
  return stretches.map((stretch) =>
    stretch.fromQuarter === first && stretch.toQuarter <= mostQuarters(stretch.pieces)
      ? { ...stretch, fromQuarter: 0 }
      : stretch,
  );
}
