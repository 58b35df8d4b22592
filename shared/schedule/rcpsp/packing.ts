import { cell } from './cell.ts';
import type { Project } from './project.ts';

/**
 * Amounts of several resources in one word of 32 bits, a lane for each with a guard bit on top:
 * with the guards set, one subtraction compares them all, and a guard that is gone says which
 * resource is short (L. Lamport, "Multiple byte processing with full-word instructions",
 * Communications of the ACM 18, 1975).
 */
export type Packing = {
  /** Words an activity or a period needs. */
  readonly words: number;
  /** By word: the guard bits of its lanes. */
  readonly guards: Int32Array;
  /** By word: all capacities. */
  readonly full: Int32Array;
  /** `activity * words + word`. */
  readonly demands: Int32Array;
};

const WORD_BITS = 32;

/** The resources of a project packed side by side, those that nobody could ever lack left out. */
export function packed({ capacities, demands, durations }: Project): Packing {
  const lanes: { readonly kind: number; readonly word: number; readonly shift: number }[] = [];
  const guards: number[] = [0];
  let shift = 0;
  for (const [kind, capacity] of capacities.entries()) {
    const bits = WORD_BITS - Math.clz32(capacity) + 1;
    if (shift + bits > WORD_BITS) {
      guards.push(0);
      shift = 0;
    }
    const word = guards.length - 1;
    lanes.push({ kind, word, shift });
    shift += bits;
    guards[word] = (guards[word] ?? 0) | (1 << (shift - 1));
  }
  const words = guards.length;
  const full = new Int32Array(words);
  const taken = new Int32Array(durations.length * words);
  for (const { kind, word, shift: by } of lanes) {
    full[word] = cell(full, word) | (cell(capacities, kind) << by);
    for (let activity = 0; activity < durations.length; activity++) {
      const place = activity * words + word;
      taken[place] =
        cell(taken, place) | (cell(demands, activity * capacities.length + kind) << by);
    }
  }
  return { words, guards: Int32Array.from(guards), full, demands: taken };
}
