import { pickBelow, type Random } from '../../kernel/index.ts';
import { cell } from './cell.ts';
import { density, type Individual } from './individual.ts';
import type { Neighbours } from './precedence.ts';

/** The length of the window of a crossover, in parts of the list. */
const WINDOW = { least: 0.25, most: 0.75 };
/** So many fathers are drawn, with so many windows each; one window is crossed. */
const DRAWN = { fathers: 4, windowsEach: 4 };
/** How many activities of a list move on, on average, and how many places at most. */
const MUTATION = { each: 1, places: 5 };

type Window = { readonly from: number; readonly length: number };

/**
 * The mother's list, but what she has in a window in the order of a father: two-point crossover
 * (S. Hartmann, Naval Research Logistics 45, 1998). Of all drawn that father and window are taken
 * where he is the busiest and she leaves the most idle, so that peaks of use are kept and passed on
 * (V. Valls, F. Ballestín and S. Quintanilla, EJOR 185, 2008). All lists have each activity after
 * those before it, and so has the child.
 */
export function crossed(
  mother: Individual,
  drawFather: () => Individual,
  random: Random,
): Int32Array {
  let chosen: Window = { from: 0, length: 0 };
  let giver = mother;
  let most = Number.NEGATIVE_INFINITY;
  for (let fathers = 0; fathers < DRAWN.fathers; fathers++) {
    const father = drawFather();
    for (let windows = 0; windows < DRAWN.windowsEach; windows++) {
      const window = drawnWindow(mother.list.length, random);
      const last = window.from + window.length - 1;
      const gain = density(father, window.from, last) - density(mother, window.from, last);
      if (gain <= most) continue;
      most = gain;
      chosen = window;
      giver = father;
    }
  }
  return withOrderOf(giver.list, mother.list, chosen);
}

function drawnWindow(size: number, random: Random): Window {
  const part = WINDOW.least + random() * (WINDOW.most - WINDOW.least);
  const length = Math.max(1, Math.floor(size * part));
  return { from: pickBelow(random, size - length + 1), length };
}

function withOrderOf(giver: Int32Array, list: Int32Array, { from, length }: Window): Int32Array {
  const child = list.slice();
  const inside = new Uint8Array(child.length);
  for (let i = from; i < from + length; i++) inside[cell(child, i)] = 1;
  let place = from;
  for (let i = 0; i < child.length; i++) {
    const activity = cell(giver, i);
    if (inside[activity] === 1) child[place++] = activity;
  }
  return child;
}

/** Moves a few activities on in the list, each at most up to the first that has to follow it. */
export function mutate(list: Int32Array, after: Neighbours, random: Random): void {
  for (let i = 0; i < list.length - 1; i++) {
    if (random() * list.length >= MUTATION.each) continue;
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
