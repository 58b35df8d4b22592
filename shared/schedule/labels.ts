import { tellDependents } from './dependents.ts';
import { fromScratch } from './from-scratch.ts';
import { Heap } from './heap.ts';
import { at } from './network.ts';
import type { Rule } from './rule.ts';

/** In an honest settling no activity is worked out more often than this, on the average. */
const ROUNDS_MOST = 8;

/**
 * The least times that keep the rule, kept up to date from change to change: only what hangs on a
 * changed time, or is asked for more by it, is worked out again, in the order of the arcs. (The
 * method is that of Ramalingam, Song, Joskowicz and Miller, Algorithmica 23, 1999, with the arc
 * each time hangs on as the tree along which a fall is followed.)
 *
 * A time must hang on something in the end, never on itself by way of others. What would is
 * doubted, and if it turns out to be asked for after all, everything is worked out from scratch.
 */
export class Labels {
  readonly rule: Rule;
  readonly #queue: Heap;
  /** Activities whose times may have changed since `begin`, with what their times were. */
  readonly #visited: number[] = [];
  readonly #seen: Uint8Array;
  readonly #beforeS: Int32Array;
  /** Activities whose arcs ask something else now, though their times be the same. */
  readonly #restaged: Uint8Array;
  /** Whether the times that stand can be mended; else every change is worked out from scratch. */
  #mendable: boolean;
  readonly #tell = (activity: number) => this.mark(activity);

  constructor(rule: Rule, mendable?: boolean) {
    const { size } = rule.net;
    this.rule = rule;
    this.#queue = new Heap(size);
    this.#seen = new Uint8Array(size);
    this.#beforeS = new Int32Array(size * 2);
    this.#restaged = new Uint8Array(size);
    this.#mendable = mendable ?? fromScratch(rule);
  }

  /** The same times, on a rule that is a copy. */
  copy(rule: Rule): Labels {
    rule.timeS.set(this.rule.timeS);
    rule.by.set(this.rule.by);
    rule.source.set(this.rule.source);
    rule.givenUp.set(this.rule.givenUp);
    rule.tooLong.set(this.rule.tooLong);
    return new Labels(rule, this.#mendable);
  }

  /** Marks an activity about which something is news; `restaged` if it has started or finished. */
  mark(activity: number, restaged = false): void {
    this.#queue.set(activity, at(this.rule.net.rank, activity));
    if (restaged) this.#restaged[activity] = 1;
  }

  /** Works out all that the marked ones change. Answers with the activities whose times changed. */
  settle(): number[] {
    if (!this.#mendable || !this.#mend()) this.#startOver();
    const { timeS } = this.rule;
    const changed = this.#visited.filter(
      (a) => timeS[a * 2] !== this.#beforeS[a * 2] || timeS[a * 2 + 1] !== this.#beforeS[a * 2 + 1],
    );
    for (const activity of this.#visited) this.#seen[activity] = 0;
    this.#visited.length = 0;
    return changed;
  }

  /** False if it cannot be mended bit by bit. */
  #mend(): boolean {
    const { rule } = this;
    const askedMost = rule.asked + ROUNDS_MOST * rule.net.size;
    rule.trust = 'others';
    rule.doubted.length = 0;
    while (this.#queue.size > 0) {
      if (rule.asked > askedMost) return false;
      this.#workOut(this.#queue.pop());
    }
    return rule.doubted.every((arc) => this.#isKept(arc));
  }

  #workOut(activity: number): void {
    const { rule } = this;
    const [near, far] = [activity * 2, activity * 2 + 1];
    this.#remember(activity);
    const restaged = this.#restaged[activity] === 1;
    this.#restaged[activity] = 0;
    rule.askNear(activity);
    const nearMoved = rule.take(near);
    rule.askFar(activity);
    const farMoved = rule.take(far);
    if (nearMoved || restaged) tellDependents(rule, near, this.#tell);
    if (farMoved || restaged) tellDependents(rule, far, this.#tell);
  }

  #isKept(arc: number): boolean {
    const { rule } = this;
    if (arc < 0) return false;
    const { arcs } = rule.net;
    const to = at(arcs.to, arc);
    const askedS = at(rule.timeS, at(arcs.from, arc)) + at(arcs.weightS, arc);
    if (rule.isFact(to) || !rule.holds(arc)) return true;
    if (askedS > at(rule.timeS, to)) return false;
    const activity = to >> 1;
    const near = activity * 2;
    return (
      to === near ||
      !rule.isDriven(activity) ||
      askedS - at(rule.facts.maxS, activity) <= at(rule.timeS, near)
    );
  }

  #startOver(): void {
    const { size } = this.rule.net;
    for (let activity = 0; activity < size; activity++) this.#remember(activity);
    while (this.#queue.size > 0) this.#restaged[this.#queue.pop()] = 0;
    this.#mendable = fromScratch(this.rule);
  }

  #remember(activity: number): void {
    if (this.#seen[activity] === 1) return;
    this.#seen[activity] = 1;
    this.#visited.push(activity);
    this.#beforeS[activity * 2] = at(this.rule.timeS, activity * 2);
    this.#beforeS[activity * 2 + 1] = at(this.rule.timeS, activity * 2 + 1);
  }
}
