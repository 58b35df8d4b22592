import { NOWHERE } from './by.ts';
import { at } from './network.ts';
import type { Rule } from './rule.ts';

/**
 * `node` hangs on what the activity `over` hung on before it came to hang on `node`; what it hangs
 * on in truth is `hung`, a node of `over`.
 */
type Detour = {
  readonly over: number;
  readonly node: number;
  readonly hung: number;
  /** The settling that it was begun in. */
  readonly settling: number;
};

/**
 * Where the tree of what hangs on what is led round an activity that was asked for by one that
 * hangs on it, and was believed. What was believed at one change is doubted again at a later one
 * that concerns it: else the two would hold each other up when what put them off is gone.
 */
export class Detours {
  readonly #rule: Rule;
  readonly #mark: (activity: number) => void;
  #begun: Detour[] = [];
  /** They begin once the activity they lead round is worked out. */
  #toBegin: Detour[] = [];
  #settling = 0;

  /** `mark` has an activity worked out again. */
  constructor(rule: Rule, mark: (activity: number) => void) {
    this.#rule = rule;
    this.#mark = mark;
  }

  /** What comes now is another change. */
  beginSettling(): void {
    this.#settling++;
  }

  takeOver(other: Detours): void {
    this.#begun = [...other.#begun];
    this.#settling = other.#settling;
  }

  /** Forgets those that lead round such activities. */
  forget(isIts: (activity: number) => boolean): void {
    this.#begun = this.#begun.filter(({ over }) => !isIts(over));
    this.#toBegin = this.#toBegin.filter(({ over }) => !isIts(over));
  }

  /** Lets the first of a chain that hangs on an activity hang on what that hangs on. */
  leadRound(over: number, from: number): void {
    const { source } = this.#rule;
    const isLast = (node: number) => at(source, node) >> 1 === over;
    const node = this.#along(from, isLast);
    if (node === NOWHERE) return;
    const hung = at(source, node);
    let beyond = hung;
    while (beyond >> 1 === over) beyond = at(source, beyond);
    source[node] = beyond;
    this.#toBegin.push({ over, node, hung, settling: this.#settling });
  }

  /** An activity is about to be worked out. */
  workedOut(activity: number): void {
    if (this.#begun.length > 0) {
      for (const { over, node } of this.#believed()) {
        if (over === activity || node >> 1 === activity) this.#doubt(node);
      }
      // What is worked out anew makes no detour any more; who made one round it must look again.
      for (const { over, node } of this.#begun) if (over === activity) this.#mark(node >> 1);
      this.#begun = this.#begun.filter(({ node }) => node >> 1 !== activity);
    }
    if (this.#toBegin.length === 0) return;
    for (const each of this.#toBegin) if (each.over === activity) this.#begun.push(each);
    this.#toBegin = this.#toBegin.filter(({ over }) => over !== activity);
  }

  /** A time of an activity has fallen: what was believed because of it is doubted. */
  fallen(activity: number): void {
    const { source } = this.#rule;
    for (const { node } of this.#believed()) {
      const isIts = (from: number) => from >> 1 === activity;
      if (this.#along(at(source, node), isIts) !== NOWHERE) this.#doubt(node);
    }
  }

  /**
   * The first such node on the way along what `start` hangs on; `NOWHERE` if there is none. Times
   * that are equal may hang on each other in a circle.
   */
  #along(start: number, isIt: (node: number) => boolean): number {
    const { source } = this.#rule;
    let node = start;
    for (let steps = 0; node !== NOWHERE && steps <= source.length; steps++) {
      if (isIt(node)) return node;
      node = at(source, node);
    }
    return NOWHERE;
  }

  /** What was believed at another change. */
  #believed(): readonly Detour[] {
    return this.#begun.filter(({ settling }) => settling < this.#settling);
  }

  /** Lets a node hang on what it hangs on in truth, and has all it was led round look again. */
  #doubt(node: number): void {
    const its = this.#believed().filter((detour) => detour.node === node);
    const [first] = its;
    if (!first) return;
    this.#rule.source[node] = first.hung;
    this.#mark(node >> 1);
    for (const { over } of its) this.#mark(over);
    this.#begun = this.#begun.filter((detour) => !its.includes(detour));
  }
}
