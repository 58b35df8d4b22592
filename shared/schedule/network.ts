/** Items grouped by a small integer key, laid end to end (compressed sparse rows). */
export type Groups = { readonly first: Int32Array; readonly items: Int32Array };

/** Groups the numbers 0 … keys.length - 1 by their key. */
export function grouped(keys: ArrayLike<number>, groups: number): Groups {
  const first = new Int32Array(groups + 1);
  for (let i = 0; i < keys.length; i++) first[at(keys, i) + 1] = at(first, at(keys, i) + 1) + 1;
  for (let g = 0; g < groups; g++) first[g + 1] = at(first, g + 1) + at(first, g);
  const next = first.slice();
  const items = new Int32Array(keys.length);
  for (let i = 0; i < keys.length; i++) {
    const key = at(keys, i);
    items[at(next, key)] = i;
    next[key] = at(next, key) + 1;
  }
  return { first, items };
}

/**
 * Reads an array of numbers at a place that is known to lie within it, for the inner loops.
 * @example at([5, 6], 1) //=> 6
 */
export function at(values: ArrayLike<number>, index: number): number {
  return values[index] as number;
}

/** Every activity is two nodes of the network: where it starts, and where it ends. */
export const startOf = (activity: number) => activity * 2;
/** @example endOf(3) //=> 7 */
export const endOf = (activity: number) => activity * 2 + 1;
/** @example activityOf(7) //=> 3 */
export const activityOf = (node: number) => node >> 1;
/** The other end of the same activity. @example otherEnd(7) //=> 6 */
export const otherEnd = (node: number) => node ^ 1;

/** An arc asks that its head comes at least `weightS` after its tail; a maximum is an arc back. */
export type Arc = {
  readonly from: number;
  readonly to: number;
  readonly weightS: number;
  /** From a maximum lag: it runs against the order in which things are done. */
  readonly back: boolean;
};

/** Arcs in columns, with their way out of and into each node. */
export type Arcs = {
  readonly count: number;
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly weightS: Int32Array;
  readonly back: Uint8Array;
  readonly out: Groups;
  readonly into: Groups;
};

/** Lays a list of arcs out in columns. */
export function arcsOf(list: readonly Arc[], nodes: number): Arcs {
  const from = Int32Array.from(list, (arc) => arc.from);
  const to = Int32Array.from(list, (arc) => arc.to);
  return {
    count: list.length,
    from,
    to,
    weightS: Int32Array.from(list, (arc) => arc.weightS),
    back: Uint8Array.from(list, (arc) => (arc.back ? 1 : 0)),
    out: grouped(from, nodes),
    into: grouped(to, nodes),
  };
}
