import { tellDependents } from './dependents.ts';
import { Detours } from './detours.ts';
import { forget, raiseAll } from './from-scratch.ts';
import { Heap } from './heap.ts';
import { at } from './network.ts';
import type { Rule } from './rule.ts';

/** More detours than this in one settling are a sign of a circle that rises for ever. */
const DETOURS_MOST = 64;
/** In an honest settling no activity is worked out more often than this, on the average. */
const ROUNDS_MOST = 16;

/**
 * The least times that keep the rule, kept up to date from change to change: only what hangs on a
 * changed time, or is asked for more by it, is worked out again, in the order of the arcs. (The
 * method is that of Ramalingam, Song, Joskowicz and Miller, Algorithmica 23, 1999, with what each
 * time hangs on as the tree along which a fall is followed.)
 *
 * Since maximum lags run back, a time may be asked for by one that hangs on it. Such an echo is not
 * believed at first, for after a fall it may be no more than the old time coming back. If it still
 * asks when all else is settled it is no echo: somebody's hours have put something off further than
 * it was asked. Then it is believed, and the tree is led round the one it came from.
 */
export class Labels {
  readonly rule: Rule;
  readonly #queue: Heap;
  readonly #tell = (activity: number) =>
    this.#queue.set(activity, at(this.rule.net.rank, activity));
  /** Activities worked out in this settling, with the times they had before. */
  readonly #visited: number[] = [];
  readonly #seen: Uint8Array;
  readonly #beforeS: Int32Array;
  /** Activities whose arcs ask something else now, though their times be the same. */
  readonly #restaged: Uint8Array;
  readonly #detours: Detours;
  /** What is to be worked out, by one that stands for its part. */
  readonly #marked = new Map<number, number[]>();
  /**
   * Of parts in which arcs had to be given up, one: every change of theirs is worked out from
   * scratch.
   */
  readonly #unmendable: number[] = [];

  constructor(rule: Rule) {
    const { size } = rule.net;
    this.rule = rule;
    this.#queue = new Heap(size);
    this.#seen = new Uint8Array(size);
    this.#beforeS = new Int32Array(size * 2);
    this.#restaged = new Uint8Array(size);
    this.#detours = new Detours(rule, this.#tell);
  }

  /** Works out all times for the first time. */
  static from(rule: Rule): Labels {
    const labels = new Labels(rule);
    for (const activity of rule.net.order) labels.mark(activity);
    labels.settle();
    return labels;
  }

  /** The same times, on a rule that follows a copy of the facts. */
  copy(rule: Rule): Labels {
    rule.timeS.set(this.rule.timeS);
    rule.by.set(this.rule.by);
    rule.source.set(this.rule.source);
    for (const arc of this.rule.givenUp) rule.givenUp.add(arc);
    rule.tooLong.set(this.rule.tooLong);
    const copy = new Labels(rule);
    copy.#detours.takeOver(this.#detours);
    copy.#unmendable.push(...this.#unmendable);
    return copy;
  }

  /** Marks an activity about which something is news; `restaged` if it has started or finished. */
  mark(activity: number, restaged = false): void {
    if (restaged) this.#restaged[activity] = 1;
    const part = this.rule.arcs.parts.rootOf(activity);
    const marked = this.#marked.get(part);
    if (marked) marked.push(activity);
    else this.#marked.set(part, [activity]);
  }

  /** Marks whom an arc that came or went concerns: who hung on it, or is asked for more by it. */
  markArc(arc: number): void {
    const { rule } = this;
    const to = rule.toOf(arc);
    const near = to & ~1;
    const hungOnIt = rule.by[near] === arc || rule.by[near + 1] === arc;
    const askedS = at(rule.timeS, rule.fromOf(arc)) + at(rule.arcs.weightS, arc);
    const isAsked = askedS > at(rule.timeS, to) && !rule.isFact(to) && rule.holds(arc);
    if (hungOnIt || isAsked) this.mark(to >> 1);
  }

  /** Works out all that the marked ones change. Answers with the activities whose times changed. */
  settle(): number[] {
    this.#detours.beginSettling();
    for (const marked of this.#markedByPart()) {
      for (const activity of marked) this.#tell(activity);
      const [one = 0] = marked;
      const isMendable = !this.#unmendable.some((each) => this.#isWith(each, one));
      if (!(isMendable && this.#mend())) this.#startOver(one);
    }
    this.#marked.clear();
    const { timeS } = this.rule;
    const changed = this.#visited.filter(
      (a) => timeS[a * 2] !== this.#beforeS[a * 2] || timeS[a * 2 + 1] !== this.#beforeS[a * 2 + 1],
    );
    for (const activity of this.#visited) this.#seen[activity] = 0;
    this.#visited.length = 0;
    return changed;
  }

  /** Parts may have been joined since they were marked. */
  #markedByPart(): Iterable<readonly number[]> {
    const { parts } = this.rule.arcs;
    const isAsMarked = [...this.#marked.keys()].every((part) => parts.rootOf(part) === part);
    if (isAsMarked) return this.#marked.values();
    const joined = new Map<number, number[]>();
    for (const [part, marked] of this.#marked) {
      const root = parts.rootOf(part);
      joined.set(root, [...(joined.get(root) ?? []), ...marked]);
    }
    return joined.values();
  }

  #isWith(a: number, b: number): boolean {
    const { parts } = this.rule.arcs;
    return parts.rootOf(a) === parts.rootOf(b);
  }

  /** False if the times would rise for ever. */
  #mend(): boolean {
    const { rule } = this;
    const askedMost = rule.asked + ROUNDS_MOST * rule.net.size;
    rule.trust = 'others';
    for (let detours = 0; this.#queue.size > 0; ) {
      while (this.#queue.size > 0) {
        if (rule.asked > askedMost) return false;
        this.#workOut(this.#queue.pop());
      }
      detours += this.#believe();
      if (detours > DETOURS_MOST) return false;
    }
    return true;
  }

  #workOut(activity: number): void {
    const { rule } = this;
    const [near, far] = [activity * 2, activity * 2 + 1];
    this.#remember(activity);
    const restaged = this.#restaged[activity] === 1;
    this.#restaged[activity] = 0;
    this.#detours.workedOut(activity);
    const [nearS, farS] = [at(rule.timeS, near), at(rule.timeS, far)];
    rule.askNear(activity);
    const nearMoved = rule.take(near);
    rule.askFar(activity);
    const farMoved = rule.take(far);
    const isFallen = at(rule.timeS, near) < nearS || at(rule.timeS, far) < farS;
    if (isFallen) this.#detours.fallen(activity);
    if (nearMoved || restaged) tellDependents(rule, near, this.#tell);
    if (farMoved || restaged) tellDependents(rule, far, this.#tell);
  }

  /** Believes the doubted ones that still ask when all else is settled; how many there were. */
  #believe(): number {
    const { rule } = this;
    let count = 0;
    for (const { from, self, arc } of rule.doubts) {
      if (!rule.isAskedMore(self, from, arc)) continue;
      count++;
      this.#tell(self >> 1);
      this.#detours.leadRound(self >> 1, from);
    }
    rule.doubts.length = 0;
    return count;
  }

  /** Works out the part of one activity from the beginning. */
  #startOver(one: number): void {
    const { rule } = this;
    const its = [...rule.net.order].filter((activity) => this.#isWith(activity, one));
    for (const activity of its) {
      this.#remember(activity);
      forget(rule, activity);
      rule.tooLong[activity] = 0;
      this.#tell(activity);
    }
    for (const arc of [...rule.givenUp]) {
      if (this.#isWith(rule.toOf(arc) >> 1, one)) rule.givenUp.delete(arc);
    }
    rule.doubts.length = 0;
    this.#detours.forget((activity) => this.#isWith(activity, one));
    const others = this.#unmendable.filter((each) => !this.#isWith(each, one));
    this.#unmendable.splice(0, this.#unmendable.length, ...others);
    if (this.#mend()) return;
    this.#unmendable.push(one);
    while (this.#queue.size > 0) this.#queue.pop();
    for (const activity of its) this.#restaged[activity] = 0;
    raiseAll(rule, its);
  }

  #remember(activity: number): void {
    if (this.#seen[activity] === 1) return;
    this.#seen[activity] = 1;
    this.#visited.push(activity);
    this.#beforeS[activity * 2] = at(this.rule.timeS, activity * 2);
    this.#beforeS[activity * 2 + 1] = at(this.rule.timeS, activity * 2 + 1);
  }
}
