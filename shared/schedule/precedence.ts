import type { Net } from './net.ts';
import { activityOf, at } from './network.ts';

/** Which activities come before which, as far as an order of placing can follow it. */
export type Precedence = {
  /** An order in which every activity comes after all of `before`. */
  readonly rank: Int32Array;
  readonly before: readonly (readonly number[])[];
  readonly after: readonly (readonly number[])[];
};

type Network = Pick<Net, 'arcs' | 'size'>;

/**
 * Orders activities by their minimum lags. Activities that hold one another (each within so much
 * of the other) have no order of their own: the one with the earlier bound goes first, and what
 * would run against the order is left out.
 */
export function precedenceOf(net: Network, startLoS: ArrayLike<number>): Precedence {
  const pairs = orderingPairs(net);
  const rank = ranks(net.size, pairs, startLoS);
  const kept = pairs.filter(([a, b]) => at(rank, a) < at(rank, b));
  const before: number[][] = Array.from({ length: net.size }, () => []);
  const after: number[][] = Array.from({ length: net.size }, () => []);
  for (const [a, b] of kept) {
    before[b]?.push(a);
    after[a]?.push(b);
  }
  return { rank, before, after };
}

/** Each pair once: a minimum orders its ends, a maximum only when it asks for a distance. */
function orderingPairs({ arcs, size }: Network): (readonly [number, number])[] {
  const pairs = new Map<number, readonly [number, number]>();
  for (let arc = 0; arc < arcs.count; arc++) {
    const [a, b] = [activityOf(at(arcs.from, arc)), activityOf(at(arcs.to, arc))];
    if (a === b || (arcs.back[arc] === 1 && at(arcs.weightS, arc) <= 0)) continue;
    pairs.set(a * size + b, [a, b]);
  }
  return [...pairs.values()];
}

function ranks(
  size: number,
  pairs: readonly (readonly [number, number])[],
  startLoS: ArrayLike<number>,
): Int32Array {
  const waiting = new Int32Array(size);
  const after: number[][] = Array.from({ length: size }, () => []);
  for (const [a, b] of pairs) {
    waiting[b] = at(waiting, b) + 1;
    after[a]?.push(b);
  }
  const left = new Set(Array.from({ length: size }, (_, i) => i));
  const rank = new Int32Array(size);
  const ready = [...left].filter((a) => at(waiting, a) === 0);
  for (let next = 0; next < size; next++) {
    const a = ready.pop() ?? earliestOf(left, startLoS);
    if (!left.delete(a)) {
      next--;
      continue;
    }
    rank[a] = next;
    for (const b of after[a] ?? []) {
      waiting[b] = at(waiting, b) - 1;
      if (at(waiting, b) === 0 && left.has(b)) ready.push(b);
    }
  }
  return rank;
}

function earliestOf(left: ReadonlySet<number>, startLoS: ArrayLike<number>): number {
  let first = -1;
  for (const a of left) if (first < 0 || at(startLoS, a) < at(startLoS, first)) first = a;
  return first;
}
