import type { Arcs } from './network.ts';
import { activityOf, at } from './network.ts';
import { Parts } from './parts.ts';

/** Which activities lags tie together, however far round: a change of one stays within its tie. */
export type Ties = {
  /** By activity. */
  readonly tieOf: Int32Array;
  /** The activities of each tie. */
  readonly members: readonly (readonly number[])[];
};

/** The weak components of the arcs. */
export function tiesOf({ from, to, count }: Arcs, size: number): Ties {
  const parts = Parts.of(size);
  for (let arc = 0; arc < count; arc++) {
    parts.join(activityOf(at(from, arc)), activityOf(at(to, arc)));
  }
  const numbers = new Map<number, number>();
  const tieOf = Int32Array.from({ length: size }, (_, activity) => {
    const root = parts.rootOf(activity);
    const number = numbers.get(root) ?? numbers.size;
    numbers.set(root, number);
    return number;
  });
  const members: number[][] = Array.from(numbers, () => []);
  tieOf.forEach((tie, activity) => {
    members[tie]?.push(activity);
  });
  return { tieOf, members };
}
