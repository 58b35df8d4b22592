import { type Random, seeded } from '../../kernel/index.ts';
import type { Decision } from './branching.ts';
import { cell } from './cell.ts';
import type { Scheduled } from './genetic.ts';
import { atLeast, atMost, opposite, type Trail } from './trail.ts';

/** How much of a schedule is set free, in parts of its length. */
const FREE = { least: 0.1, most: 0.5 };
/** How often what is outside may come sooner by one period alone. */
const NARROW = 0.5;

/**
 * A walk near a schedule that is known: in a window of time everything is free, outside it nothing
 * may come later, and sooner only by a little (a large neighbourhood, P. Shaw, CP 1998; as bounds
 * on starts, a corridor, M. Sniedovich and S. Voß, Control and Cybernetics 35, 2006). The walls are
 * decisions like others, so what is learned between them holds everywhere, and one that cannot
 * stand is passed over.
 */
export class Corridor {
  readonly #random: Random = seeded(1);
  /** Bounds and values by turns. */
  #walls: number[] = [];
  /** By how much the whole is to become shorter: more where that went well. */
  #stride = 1;

  /** Draws a window of a schedule and builds the walls outside it. */
  draw({ makespan, starts }: Scheduled): void {
    const part = FREE.least + this.#random() * (FREE.most - FREE.least);
    const length = part * makespan;
    // A window may hang over either end by half, so that the ends are as often free as the middle.
    const from = this.#random() * makespan - length / 2;
    const isNarrow = this.#random() < NARROW;
    const sooner = isNarrow ? 1 : 1 + Math.floor((this.#random() * length) / 2);
    const sink = starts.length - 1;
    this.#walls = [atMost(sink), this.#stride - makespan];
    for (let activity = 1; activity < sink; activity++) {
      const start = cell(starts, activity);
      if (start >= from && start < from + length) continue;
      this.#walls.push(atMost(activity), -start, atLeast(activity), start - sooner);
    }
  }

  /** Says whether the last walk found a shorter schedule. */
  ended(isShorter: boolean): void {
    this.#stride = isShorter ? this.#stride * 2 : Math.max(1, this.#stride >> 1);
  }

  /** The first wall that does not stand and still can. */
  next(trail: Trail): Decision | undefined {
    for (let i = 0; i < this.#walls.length; i += 2) {
      const bound = this.#walls[i] ?? 0;
      const value = this.#walls[i + 1] ?? 0;
      if (trail.holds(bound, value) || trail.holds(opposite(bound), 1 - value)) continue;
      return { bound, value };
    }
    return undefined;
  }
}
