import type { Arcs } from './network.ts';
import { activityOf, at } from './network.ts';

/** Which activities lags tie together, however far round: a change of one stays within its tie. */
export type Ties = {
  /** By activity. */
  readonly tieOf: Int32Array;
  /** The activities of each tie. */
  readonly members: readonly (readonly number[])[];
};

/** The weak components of the arcs, found by joining trees of activities. */
export function tiesOf({ from, to, count }: Arcs, size: number): Ties {
  const parent = Int32Array.from({ length: size }, (_, activity) => activity);
  const rootOf = (activity: number): number => {
    let root = activity;
    while (at(parent, root) !== root) {
      parent[root] = at(parent, at(parent, root));
      root = at(parent, root);
    }
    return root;
  };
  for (let arc = 0; arc < count; arc++) {
    parent[rootOf(activityOf(at(from, arc)))] = rootOf(activityOf(at(to, arc)));
  }
  const numbers = new Map<number, number>();
  const tieOf = parent.map((_, activity) => {
    const root = rootOf(activity);
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
