import { cell } from './cell.ts';

/** A schedule as it is bred: by its times in the mirror, where it is the next to be decoded. */
export type Individual = {
  readonly makespan: number;
  /** Starts with time turned round: the makespan less the end. */
  readonly starts: Int32Array;
  /** All activities by these starts. */
  readonly list: Int32Array;
  /** Along the list, the work done by all before a place, in shares of capacity times periods. */
  readonly workBefore: Float64Array;
};

/** The individual that a schedule is; `order` settles equal starts. */
export function individualOf(
  makespan: number,
  mirroredStarts: Int32Array,
  order: Int32Array,
  work: Float64Array,
): Individual {
  const list = sortedByStart(mirroredStarts, makespan, order);
  const workBefore = new Float64Array(list.length + 1);
  for (let place = 0; place < list.length; place++) {
    workBefore[place + 1] = (workBefore[place] ?? 0) + (work[cell(list, place)] ?? 0);
  }
  return { makespan, starts: mirroredStarts, list, workBefore };
}

/** How busy the resources are from one place of the list to another, both within. */
export function density(individual: Individual, from: number, to: number): number {
  const { list, starts, workBefore, makespan } = individual;
  const end = to + 1 < list.length ? cell(starts, cell(list, to + 1)) : makespan;
  const span = end - cell(starts, cell(list, from));
  return ((workBefore[to + 1] ?? 0) - (workBefore[from] ?? 0)) / (span + SPAN_AT_LEAST);
}

/** Keeps the density of a window of next to no length from deciding everything. */
const SPAN_AT_LEAST = 3;

/** Sorting by counting: a start is a small whole number. */
function sortedByStart(starts: Int32Array, makespan: number, order: Int32Array): Int32Array {
  const next = new Int32Array(makespan + 2);
  for (let i = 0; i < starts.length; i++) {
    const after = cell(starts, i) + 1;
    next[after] = cell(next, after) + 1;
  }
  for (let time = 0; time <= makespan; time++) {
    next[time + 1] = cell(next, time + 1) + cell(next, time);
  }
  const list = new Int32Array(starts.length);
  for (let i = 0; i < order.length; i++) {
    const activity = cell(order, i);
    const start = cell(starts, activity);
    list[cell(next, start)] = activity;
    next[start] = cell(next, start) + 1;
  }
  return list;
}
