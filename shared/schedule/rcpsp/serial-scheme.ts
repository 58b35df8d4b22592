import { cell } from './cell.ts';
import type { Packing } from './packing.ts';
import type { Precedence } from './precedence.ts';

/**
 * The serial schedule generation scheme (J. E. Kelley 1963; R. Kolisch, EJOR 90, 1996): one
 * activity of a list after the other at the earliest time that its predecessors and the resources
 * allow.
 */
export class SerialScheme {
  readonly #precedence: Precedence;
  readonly #packing: Packing;
  /** What is free of all resources, `period * words + word`. */
  readonly #free: Int32Array;
  #used = 0;

  constructor(precedence: Precedence, packing: Packing) {
    this.#precedence = precedence;
    this.#packing = packing;
    const horizon = precedence.durations.reduce((sum, duration) => sum + duration, 0);
    this.#free = new Int32Array((horizon + 1) * packing.words);
    this.#used = horizon + 1;
  }

  /** Writes the starts of a list in which each comes after its predecessors; gives the makespan. */
  decode(list: Int32Array, starts: Int32Array): number {
    const { durations, before } = this.#precedence;
    const { first, list: earlier } = before;
    this.#clear();
    let makespan = 0;
    for (let place = 0; place < list.length; place++) {
      const activity = cell(list, place);
      let from = 0;
      for (let i = cell(first, activity); i < cell(first, activity + 1); i++) {
        const other = cell(earlier, i);
        const end = cell(starts, other) + cell(durations, other);
        if (end > from) from = end;
      }
      const start = this.#place(activity, from, cell(durations, activity));
      starts[activity] = start;
      if (start + cell(durations, activity) > makespan)
        makespan = start + cell(durations, activity);
    }
    this.#used = makespan;
    return makespan;
  }

  #clear(): void {
    const { words, full } = this.#packing;
    if (words === 1) this.#free.fill(cell(full, 0), 0, this.#used);
    else for (let i = 0; i < this.#used * words; i++) this.#free[i] = cell(full, i % words);
  }

  #place(activity: number, from: number, duration: number): number {
    const { words, demands } = this.#packing;
    const start =
      words === 1 ? this.#fitOne(activity, from, duration) : this.#fit(activity, from, duration);
    for (let i = start * words; i < (start + duration) * words; i++) {
      this.#free[i] = cell(this.#free, i) - cell(demands, activity * words + (i % words));
    }
    return start;
  }

  /** As `#fit`, for the usual case that all resources go into one word. */
  #fitOne(activity: number, from: number, duration: number): number {
    const free = this.#free;
    const demand = cell(this.#packing.demands, activity);
    if (demand === 0) return from;
    const guards = cell(this.#packing.guards, 0);
    let start = from;
    let known = from;
    for (let time = from + duration - 1; time >= known; time--) {
      if ((((cell(free, time) | guards) - demand) & guards) === guards) continue;
      known = start + duration;
      start = time + 1;
      time = start + duration;
    }
    return start;
  }

  /**
   * The earliest start: a window is read from its end, so that the last period that is short moves
   * the start beyond it at once; what was read before is not read again.
   */
  #fit(activity: number, from: number, duration: number): number {
    let start = from;
    let known = from;
    for (let time = from + duration - 1; time >= known; time--) {
      if (this.#fits(activity, time)) continue;
      known = start + duration;
      start = time + 1;
      time = start + duration;
    }
    return start;
  }

  #fits(activity: number, time: number): boolean {
    const { words, demands, guards } = this.#packing;
    for (let word = 0; word < words; word++) {
      const guard = cell(guards, word);
      const left =
        (cell(this.#free, time * words + word) | guard) - cell(demands, activity * words + word);
      if ((left & guard) !== guard) return false;
    }
    return true;
  }
}
