import { unreachable } from '../../kernel/index.ts';
import { cell } from './cell.ts';
import type { Propagation } from './propagation.ts';
import { authorOf, ruleOf, type Say } from './reason.ts';
import { opposite, type Trail } from './trail.ts';

/** What a contradiction teaches: a clause, and the level down to which to go back with it. */
export type Lesson = { readonly clause: Int32Array; readonly level: number };

const UNSAID = -(1 << 30);

/**
 * Learns from a contradiction: goes back along the trail, a conclusion replaced by its reason,
 * until one statement alone is left of the present level (first unique implication point;
 * J. Marques-Silva and K. Sakallah 1999). Of a reason no more is asked than its conclusion needs.
 */
export class Conflicts {
  readonly #trail: Trail;
  readonly #propagation: Propagation;
  /** By bound, the value that is said to hold. */
  readonly #said: Int32Array;
  #bounds: number[] = [];
  /** How many of these came to hold at the present level. */
  #present = 0;
  readonly #onUse: (variable: number) => void;

  constructor(trail: Trail, propagation: Propagation, onUse: (variable: number) => void) {
    this.#trail = trail;
    this.#propagation = propagation;
    this.#said = new Int32Array(trail.value.length).fill(UNSAID);
    this.#onUse = onUse;
  }

  /** Above level 0 only. Takes back the present level as far as it has to. */
  learn(): Lesson {
    this.#bounds = [];
    this.#present = 0;
    this.#sayContradiction();
    if (this.#present === 0) this.#backToPresent();
    const first = this.#backToOne();
    const lesson = this.#lesson(first);
    for (const bound of this.#bounds) this.#said[bound] = UNSAID;
    return lesson;
  }

  readonly #say: Say = (bound, value) => {
    const said = cell(this.#said, bound);
    if (said >= value) return;
    const place = this.#trail.placeOf(bound, value);
    if (place < 0 || this.#trail.levelOf(place) === 0) return;
    if (said === UNSAID) {
      this.#bounds.push(bound);
      this.#onUse(bound >> 1);
    }
    const start = this.#trail.levelStart;
    const wasPresent = said !== UNSAID && this.#trail.placeOf(bound, said) >= start;
    this.#said[bound] = value;
    if (place >= start && !wasPresent) this.#present++;
  };

  #sayContradiction(): void {
    const { timetable, energy } = this.#propagation;
    if (timetable.explainOverload(this.#say)) return;
    if (energy.explainOverload(this.#trail, this.#say)) return;
    const bound = this.#trail.boundAt(this.#trail.size - 1);
    const against = cell(this.#trail.value, opposite(bound));
    this.#say(opposite(bound), against);
    this.#say(bound, 1 - against);
  }

  /** A contradiction seen late belongs to the level at which the last part of it came up. */
  #backToPresent(): void {
    this.#trail.backTo(Math.max(...this.#bounds.map((bound) => this.#levelOf(bound))));
    const { levelStart } = this.#trail;
    this.#present = this.#bounds.filter((bound) => this.#placeOf(bound) >= levelStart).length;
  }

  #backToOne(): number {
    const trail = this.#trail;
    for (;;) {
      const place = trail.size - 1;
      const bound = trail.boundAt(place);
      const value = cell(this.#said, bound);
      const isSaidHere = value !== UNSAID && trail.oldAt(place) < value;
      if (isSaidHere && this.#present === 1) return bound;
      const reason = trail.reasonAt(place);
      trail.pop();
      if (!isSaidHere) continue;
      this.#said[bound] = UNSAID;
      this.#bounds = this.#bounds.filter((other) => other !== bound);
      this.#present--;
      this.#explain(reason, bound, value);
    }
  }

  #explain(reason: number, bound: number, value: number): void {
    const { lags, timetable, energy, nogoods } = this.#propagation;
    const rule = ruleOf(reason);
    const author = authorOf(reason);
    switch (author) {
      case 'lag':
        lags.explain(rule, value, this.#say);
        break;
      case 'order':
        lags.explainOrder(rule, this.#trail, this.#say);
        break;
      case 'timetable':
        timetable.explain(rule, bound, this.#say);
        break;
      case 'energy':
        energy.explain(rule, bound, value, this.#trail, this.#say);
        break;
      case 'nogood':
        nogoods.explain(rule, bound, this.#say);
        break;
      default:
        unreachable(author);
    }
  }

  #lesson(first: number): Lesson {
    const others = this.#bounds
      .filter((bound) => bound !== first && !this.#isImplied(bound))
      .map((bound) => ({ bound, level: this.#levelOf(bound) }))
      .sort((a, b) => b.level - a.level);
    const statements = [first, ...others.map(({ bound }) => bound)];
    const clause = Int32Array.from(
      statements.flatMap((bound) => [opposite(bound), 1 - cell(this.#said, bound)]),
    );
    return { clause, level: others[0]?.level ?? 0 };
  }

  #levelOf(bound: number): number {
    return this.#trail.levelOf(this.#placeOf(bound));
  }

  #placeOf(bound: number): number {
    return this.#trail.placeOf(bound, cell(this.#said, bound));
  }

  /** Whether a statement follows by one lag from what else is said. */
  #isImplied(bound: number): boolean {
    const value = cell(this.#said, bound);
    const reason = this.#trail.reasonAt(this.#trail.placeOf(bound, value));
    if (reason < 0 || authorOf(reason) !== 'lag') return false;
    let isImplied = true;
    this.#propagation.lags.explain(ruleOf(reason), value, (from, least) => {
      if (cell(this.#said, from) >= least) return;
      const place = this.#trail.placeOf(from, least);
      if (place >= 0 && this.#trail.levelOf(place) > 0) isImplied = false;
    });
    return isImplied;
  }
}
