import { pickBelow, type Random } from '../../kernel/index.ts';
import { cell } from './cell.ts';
import { density, type Individual } from './individual.ts';
import type { Neighbours } from './precedence.ts';

/** The length of the window of a crossover, in parts of the list. */
const WINDOW = { least: 0.25, most: 0.75 };
/** Of so many windows drawn, the one where the mother's resources are the least busy. */
const WINDOWS_DRAWN = 8;
/** How often an activity moves on in a list, and how many places at most. */
const MUTATION = { chance: 0.02, places: 5 };

/**
 * The mother's list, but what she has in a window in the order of the father: two-point crossover
 * (S. Hartmann, Naval Research Logistics 45, 1998), its window laid where she leaves most idle, as
 * peaks of use are kept by V. Valls, F. Ballestín and S. Quintanilla (EJOR 185, 2008). Both lists
 * have each activity after those before it, and so has the child.
 */
export function crossed(mother: Individual, father: Individual, random: Random): Int32Array {
  const { from, length } = idleWindow(mother, random);
  const child = mother.list.slice();
  const inside = new Uint8Array(child.length);
  for (let i = from; i < from + length; i++) inside[cell(child, i)] = 1;
  let place = from;
  for (let i = 0; i < child.length; i++) {
    const activity = cell(father.list, i);
    if (inside[activity] === 1) child[place++] = activity;
  }
  return child;
}

function idleWindow(mother: Individual, random: Random) {
  const size = mother.list.length;
  let chosen = { from: 0, length: 0 };
  let least = Number.POSITIVE_INFINITY;
  for (let drawn = 0; drawn < WINDOWS_DRAWN; drawn++) {
    const part = WINDOW.least + random() * (WINDOW.most - WINDOW.least);
    const length = Math.max(1, Math.floor(size * part));
    const from = pickBelow(random, size - length + 1);
    const busy = density(mother, from, from + length - 1);
    if (busy >= least) continue;
    least = busy;
    chosen = { from, length };
  }
  return chosen;
}

/** Moves a few activities on in the list, each at most up to the first that has to follow it. */
export function mutate(list: Int32Array, after: Neighbours, random: Random): void {
  for (let i = 0; i < list.length - 1; i++) {
    if (random() >= MUTATION.chance) continue;
    const activity = cell(list, i);
    const to = Math.min(list.length - 1, i + 1 + pickBelow(random, MUTATION.places));
    let place = i;
    while (place < to && !follows(cell(list, place + 1), activity, after)) {
      list[place] = cell(list, place + 1);
      place++;
    }
    list[place] = activity;
  }
}

function follows(next: number, activity: number, { first, list }: Neighbours): boolean {
  for (let i = cell(first, activity); i < cell(first, activity + 1); i++) {
    if (cell(list, i) === next) return true;
  }
  return false;
}
