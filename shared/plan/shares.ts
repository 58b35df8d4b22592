import type { Seconds } from '../kernel/index.ts';
import { seconds } from '../kernel/index.ts';
import { QUARTER_S } from './demand.ts';
import { type Kept, numberOf } from './keeping-batches.ts';
import type { Order } from './order.ts';
import { type Stretch, splitService } from './split.ts';
import { piecesFor } from './weights.ts';

/** What one batch of an order is to be, before it is worked out. */
export type Share = {
  readonly number: number;
  readonly pieces: number;
  readonly neededS: Seconds;
  readonly saleS: Seconds;
};

type Limits = Parameters<typeof splitService>[1];

/**
 * The batches that a plan names itself. Each sells until the next is ready; the last until nothing
 * more is asked for. One that has begun stays as it is.
 */
export function namedShares(order: Order, limits: Limits, begun: readonly Kept[]): Share[] {
  const { cut, dish, demand, service } = order;
  const closesS = service.opensS + demand.length * QUARTER_S;
  const named = order.readyAt.toSorted((a, b) => a.neededS - b.neededS || a.number - b.number);
  const known = new Map(begun.map((each) => [numberOf(each.batch.id), each]));
  return named.map(({ number, portions, neededS }): Share => {
    const its = known.get(number);
    if (its) return keptShare(its);
    const pieces = piecesFor(cut, dish.portionKg, portions);
    const next = named.find((other) => other.neededS > neededS)?.neededS ?? closesS;
    const mostS = limits.mostQuarters(pieces) * QUARTER_S;
    const saleS = seconds(Math.max(QUARTER_S, Math.min(next - neededS, mostS)));
    return { number, pieces, neededS, saleS };
  });
}

/**
 * As few batches as the limits allow beside those that have begun. What a begun batch does not
 * give is asked of those that come after it, and what it gives over is asked of them no more.
 */
export function evenShares(order: Order, limits: Limits, begun: readonly Kept[]): Share[] {
  const taken = new Set(begun.map(({ batch }) => numberOf(batch.id)));
  const stretches = splitService(leftBy(order, begun), limits);
  const shares = stretches.map((stretch) => {
    const number = firstFree(taken);
    taken.add(number);
    return shareOf(order, stretch, number);
  });
  return [...begun.map(keptShare), ...shares].sort((a, b) => a.number - b.number);
}

/** A batch as it is. */
export const keptShare = ({ batch, saleS }: Kept): Share => ({
  number: numberOf(batch.id),
  pieces: batch.pieces,
  neededS: batch.neededS,
  saleS,
});

function firstFree(taken: ReadonlySet<number>): number {
  let number = 1;
  while (taken.has(number)) number++;
  return number;
}

function shareOf(order: Order, { pieces, fromQuarter, toQuarter }: Stretch, number: number): Share {
  return {
    number,
    pieces,
    neededS: seconds(order.service.opensS + fromQuarter * QUARTER_S),
    saleS: seconds((toQuarter - fromQuarter) * QUARTER_S),
  };
}

/** The demand that begun batches leave to others, quarter by quarter. */
function leftBy({ demand, service }: Order, begun: readonly Kept[]): number[] {
  if (begun.length === 0) return [...demand];
  const gives = demand.map(() => 0);
  for (const { batch } of begun) {
    const quarter = Math.floor((batch.neededS - service.opensS) / QUARTER_S);
    const place = Math.min(Math.max(0, quarter), demand.length - 1);
    gives[place] = (gives[place] ?? 0) + batch.portions;
  }
  return lacking(demand, gives);
}

/** What stock coming in leaves unmet: what is over serves the quarters that follow. */
function lacking(demand: readonly number[], gives: readonly number[]): number[] {
  let stock = 0;
  return demand.map((asked, quarter) => {
    stock += gives[quarter] ?? 0;
    const served = Math.min(stock, asked);
    stock -= served;
    return asked - served;
  });
}
