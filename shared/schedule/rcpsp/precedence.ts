import { grouped } from '../network.ts';
import { cell } from './cell.ts';
import type { Project } from './project.ts';

/** The neighbours of each activity, end to end: those of `i` from `first[i]` to `first[i + 1]`. */
export type Neighbours = { readonly first: Int32Array; readonly list: Int32Array };

/** A project whose lags all say "after its end": it can be read forward and in the mirror. */
export type Precedence = {
  readonly durations: Int32Array;
  readonly before: Neighbours;
  readonly after: Neighbours;
  /** All activities, each after those before it. */
  readonly order: Int32Array;
};

/** The precedence of a project; undefined where a lag is not "after the end", or in a circle. */
export function precedenceOf({ durations, lags }: Project): Precedence | undefined {
  for (let lag = 0; lag < lags.from.length; lag++) {
    if (cell(lags.least, lag) !== cell(durations, cell(lags.from, lag))) return undefined;
  }
  const before = neighbours(durations.length, lags.to, lags.from);
  const after = neighbours(durations.length, lags.from, lags.to);
  const order = topological(before, after);
  return order && { durations, before, after, order };
}

/** The same precedence with time turned round. */
export const mirrored = ({ durations, before, after, order }: Precedence): Precedence => ({
  durations,
  before: after,
  after: before,
  order: order.slice().reverse(),
});

/** The earliest start of each activity if resources were plenty. */
export function heads({ durations, before, order }: Precedence): Int32Array {
  const starts = new Int32Array(durations.length);
  for (const activity of order) {
    for (let i = cell(before.first, activity); i < cell(before.first, activity + 1); i++) {
      const other = cell(before.list, i);
      const end = cell(starts, other) + cell(durations, other);
      if (end > cell(starts, activity)) starts[activity] = end;
    }
  }
  return starts;
}

function neighbours(size: number, of: Int32Array, other: Int32Array): Neighbours {
  const { first, items } = grouped(of, size);
  return { first, list: items.map((arc) => cell(other, arc)) };
}

function topological(before: Neighbours, after: Neighbours): Int32Array | undefined {
  const size = before.first.length - 1;
  const waitsFor = Int32Array.from(
    { length: size },
    (_, i) => cell(before.first, i + 1) - cell(before.first, i),
  );
  const order = new Int32Array(size);
  let count = 0;
  for (let i = 0; i < size; i++) if (cell(waitsFor, i) === 0) order[count++] = i;
  for (let done = 0; done < count; done++) {
    const activity = cell(order, done);
    for (let i = cell(after.first, activity); i < cell(after.first, activity + 1); i++) {
      const next = cell(after.list, i);
      waitsFor[next] = cell(waitsFor, next) - 1;
      if (cell(waitsFor, next) === 0) order[count++] = next;
    }
  }
  return count === size ? order : undefined;
}
