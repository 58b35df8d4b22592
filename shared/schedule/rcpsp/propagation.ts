import type { Energy } from './energy.ts';
import type { LagRules } from './lag-rules.ts';
import type { Nogoods } from './nogoods.ts';
import type { Timetable } from './timetable.ts';
import type { Trail } from './trail.ts';

/** Energy is dear: where it said nothing it is asked after twice as many nodes, up to so many. */
const PACE_AT_MOST = 64;

/** All that draws conclusions, from the cheapest to the dearest. */
export class Propagation {
  readonly trail: Trail;
  readonly lags: LagRules;
  readonly timetable: Timetable;
  readonly energy: Energy;
  readonly nogoods: Nogoods;
  /** The changes on the trail up to here have been answered. */
  #answered = 0;
  #pace = 1;
  /** Nodes until energy is asked again. */
  #untilEnergy = 0;
  /** How many changes there were at level 0 when energy last said nothing there. */
  #restedAt = -1;

  constructor(trail: Trail, rules: Pick<Propagation, 'lags' | 'timetable' | 'energy' | 'nogoods'>) {
    this.trail = trail;
    this.lags = rules.lags;
    this.timetable = rules.timetable;
    this.energy = rules.energy;
    this.nogoods = rules.nogoods;
  }

  /** Answers every bound once, as if it had just been given; false at a contradiction. */
  begin(): boolean {
    for (let bound = 0; bound < this.trail.value.length; bound++) {
      if (!this.lags.propagate(this.trail, bound)) return false;
    }
    return this.run();
  }

  /** Draws all that follows; false at a contradiction. */
  run(): boolean {
    this.#answered = Math.min(this.#answered, this.trail.size);
    for (;;) {
      while (this.#answered < this.trail.size) {
        const bound = this.trail.boundAt(this.#answered++);
        if (!this.lags.propagate(this.trail, bound)) return false;
        if (!this.nogoods.propagate(this.trail, bound)) return false;
      }
      if (!this.timetable.propagate(this.trail)) return false;
      if (this.#answered < this.trail.size) continue;
      const isRoot = this.trail.level === 0;
      if (isRoot ? this.trail.size === this.#restedAt : --this.#untilEnergy > 0) return true;
      if (!this.#askEnergy()) return false;
      if (this.#answered < this.trail.size) continue;
      if (isRoot) this.#restedAt = this.trail.size;
      return true;
    }
  }

  #askEnergy(): boolean {
    const isConsistent = this.energy.propagate(this.trail);
    const isNews = !isConsistent || this.#answered < this.trail.size;
    this.#pace = isNews ? Math.max(1, this.#pace >> 1) : Math.min(PACE_AT_MOST, this.#pace * 2);
    this.#untilEnergy = isNews ? 0 : this.#pace;
    return isConsistent;
  }

  /** After going back: what stands was answered before. */
  wentBack(): void {
    this.#answered = Math.min(this.#answered, this.trail.size);
  }
}
