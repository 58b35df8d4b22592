import { grouped } from '../network.ts';
import { cell } from './cell.ts';
import type { Disjunction } from './disjunctions.ts';
import type { Project, ProjectLag } from './project.ts';
import { reasonOf, type Say } from './reason.ts';
import { atLeast, atMost, opposite, type Trail } from './trail.ts';

/** The rule always holds. */
const ALWAYS = -1;

type Rule = {
  readonly from: number;
  readonly to: number;
  readonly least: number;
  /** The bound that says whether the rule holds, and from which value on. */
  readonly ifBound: number;
  readonly ifValue: number;
};

/**
 * Lags between bounds: each lag is two rules, one for earliest and one for latest starts. The order
 * of a pair is a variable of 0 or 1 on which its two lags hang; a lag that cannot be kept any more
 * decides it (reified precedences; A. Schutt, T. Feydy, P. J. Stuckey and M. G. Wallace, "Solving
 * RCPSP/max by lazy clause generation", Journal of Scheduling 16, 2013).
 */
export class LagRules {
  readonly #from: Int32Array;
  readonly #to: Int32Array;
  readonly #least: Int32Array;
  readonly #ifBound: Int32Array;
  readonly #ifValue: Int32Array;
  readonly #first: Int32Array;
  readonly #of: Int32Array;
  readonly #firstIf: Int32Array;
  readonly #ofIf: Int32Array;

  constructor(
    { durations, lags }: Project,
    decided: readonly ProjectLag[],
    open: readonly Disjunction[],
  ) {
    const rules: Rule[] = [];
    const add = (from: number, to: number, least: number, ifBound: number, ifValue: number) =>
      rules.push(
        { from: atLeast(from), to: atLeast(to), least, ifBound, ifValue },
        { from: atMost(to), to: atMost(from), least, ifBound, ifValue },
      );
    lags.from.forEach((from, lag) => {
      add(from, cell(lags.to, lag), cell(lags.least, lag), ALWAYS, 0);
    });
    for (const [from, to, least] of decided) add(from, to, least, ALWAYS, 0);
    for (const [i, [one, other]] of open.entries()) {
      const order = durations.length + i;
      add(one, other, cell(durations, one), atLeast(order), 1);
      add(other, one, cell(durations, other), atMost(order), 0);
    }
    const column = (of: (rule: Rule) => number) => Int32Array.from(rules, of);
    this.#from = column(({ from }) => from);
    this.#to = column(({ to }) => to);
    this.#least = column(({ least }) => least);
    this.#ifBound = column(({ ifBound }) => ifBound);
    this.#ifValue = column(({ ifValue }) => ifValue);
    const bounds = 2 * (durations.length + open.length);
    ({ first: this.#first, items: this.#of } = grouped(this.#from, bounds));
    // Rules without a condition are kept where no bound looks for them.
    const conditions = this.#ifBound.map((bound) => (bound === ALWAYS ? bounds : bound));
    ({ first: this.#firstIf, items: this.#ofIf } = grouped(conditions, bounds + 1));
  }

  /** Draws what follows from a bound that has risen; false at a contradiction. */
  propagate(trail: Trail, bound: number): boolean {
    for (let i = cell(this.#first, bound); i < cell(this.#first, bound + 1); i++) {
      if (!this.#apply(trail, cell(this.#of, i))) return false;
    }
    for (let i = cell(this.#firstIf, bound); i < cell(this.#firstIf, bound + 1); i++) {
      if (!this.#apply(trail, cell(this.#ofIf, i))) return false;
    }
    return true;
  }

  #apply(trail: Trail, rule: number): boolean {
    const to = cell(this.#to, rule);
    const asked = cell(trail.value, cell(this.#from, rule)) + cell(this.#least, rule);
    if (asked <= cell(trail.value, to)) return true;
    const ifBound = cell(this.#ifBound, rule);
    if (ifBound === ALWAYS) return trail.push(to, asked, reasonOf('lag', rule));
    const ifValue = cell(this.#ifValue, rule);
    if (trail.holds(ifBound, ifValue)) return trail.push(to, asked, reasonOf('lag', rule));
    if (trail.holds(opposite(ifBound), 1 - ifValue)) return true;
    if (asked + cell(trail.value, opposite(to)) <= 0) return true;
    return trail.push(opposite(ifBound), 1 - ifValue, reasonOf('order', rule));
  }

  /** Why a bound was raised by a lag to as much as `value`. */
  explain(rule: number, value: number, say: Say): void {
    const ifBound = cell(this.#ifBound, rule);
    if (ifBound !== ALWAYS) say(ifBound, cell(this.#ifValue, rule));
    say(cell(this.#from, rule), value - cell(this.#least, rule));
  }

  /** Why a lag could not be kept, as things were then. */
  explainOrder(rule: number, trail: Trail, say: Say): void {
    const from = cell(this.#from, rule);
    const value = cell(trail.value, from);
    say(from, value);
    say(opposite(cell(this.#to, rule)), 1 - value - cell(this.#least, rule));
  }
}
