import { moreByArcS, moreByDoubtS, moreS } from './asking.ts';
import { BY } from './by.ts';
import { tellAskedMore, tellHanging } from './dependents.ts';
import { forget, raiseAll } from './from-scratch.ts';
import { Heap } from './heap.ts';
import { Loops } from './loops.ts';
import { at } from './network.ts';
import type { Rule } from './rule.ts';
import type { Doubt } from './rule-types.ts';

/** In an honest settling no activity is worked out more often than this, on the average. */
const ROUNDS_MOST = 16;

/**
 * The least times that keep the rule, kept up to date from change to change: only what hangs on a
 * time that fell, or is asked for more by one that rose, is worked out again, in the order of the
 * arcs. (The method is that of Ramalingam, Song, Joskowicz and Miller, Algorithmica 23, 1999, with
 * what each time hangs on as the tree along which a fall is followed.)
 *
 * Since maximum lags run back, a time may be asked for by one that hangs on it. After a fall that
 * may be no more than the old time coming back; so it is believed as far as it is borne out (see
 * `Loops`), and whoever asks for more is heard again when all else is settled.
 */
export class Labels {
  readonly rule: Rule;
  /** What is to be worked out because of news or a fall, in the order of the arcs. */
  readonly #first: Heap;
  /** What is asked for more: by how much, the most first. */
  readonly #then: Heap;
  readonly #tell = (activity: number) =>
    this.#first.set(activity, at(this.rule.net.rank, activity));
  readonly #tellMore = (activity: number, byS: number) => this.#then.lower(activity, -byS);
  /** Activities worked out in this settling, with the times they had before. */
  readonly #visited: number[] = [];
  readonly #seen: Uint8Array;
  readonly #beforeS: Int32Array;
  /** Activities whose arcs ask something else now, though their times be the same. */
  readonly #restaged: Uint8Array;
  readonly #loops: Loops;
  /** Who asks for more than was believed, to be heard again. */
  #doubts: Doubt[] = [];
  /** What is to be worked out, by one that stands for its part. */
  readonly #marked = new Map<number, number[]>();
  /**
   * Of parts in which arcs had to be given up, one: every change of theirs is worked out from
   * scratch.
   */
  readonly #unmendable: number[] = [];

  constructor(rule: Rule, loops: Loops = new Loops(rule)) {
    const { size } = rule.net;
    this.rule = rule;
    this.#first = new Heap(size);
    this.#then = new Heap(size);
    this.#seen = new Uint8Array(size);
    this.#beforeS = new Int32Array(size * 2);
    this.#restaged = new Uint8Array(size);
    this.#loops = loops;
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
    const copy = new Labels(rule, this.#loops.copy(rule));
    copy.#unmendable.push(...this.#unmendable);
    return copy;
  }

  /** Marks an activity of which something else is asked now: by the clock, or what holds it. */
  mark(activity: number): void {
    const part = this.rule.arcs.parts.rootOf(activity);
    const marked = this.#marked.get(part);
    if (marked) marked.push(activity);
    else this.#marked.set(part, [activity]);
  }

  /** Marks an activity whose length is another now; `restaged` if it has started or finished. */
  markNews(activity: number, restaged: boolean): void {
    if (restaged) this.#restaged[activity] = 1;
    this.mark(activity);
    this.#loops.tellBroken(activity, (other) => this.mark(other));
  }

  /** Marks the activity of a node with another floor, if that is news to it. */
  markFloor(node: number): void {
    const { rule } = this;
    // Work ends when it is done: no plan holds it back.
    if ((node & 1) === 1 && rule.net.isWork[node >> 1] === 1) return;
    const hangsOnIt = this.#loops.baseOf(node) === BY.plan;
    const isAsked = moreS(rule, node, at(rule.floorS, node), true) > 0 && !rule.isFact(node);
    if (hangsOnIt || isAsked) this.mark(node >> 1);
  }

  /** Marks whom an arc that came or went concerns: who hung on it, or is asked for more by it. */
  markArc(arc: number): void {
    const { rule } = this;
    const to = rule.toOf(arc);
    const near = to & ~1;
    const hungOnIt = this.#hangsBy(near, arc) || this.#hangsBy(near + 1, arc);
    if (hungOnIt || moreByArcS(rule, arc) > 0) this.mark(to >> 1);
    this.#loops.tellBroken(to >> 1, (other) => this.mark(other));
  }

  #hangsBy(node: number, arc: number): boolean {
    return this.rule.by[node] === arc || this.#loops.baseOf(node) === arc;
  }

  /** Works out all that the marked ones change. Answers with the activities whose times changed. */
  settle(): number[] {
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
    while (this.#first.size + this.#then.size > 0) {
      while (this.#first.size + this.#then.size > 0) {
        const next = this.#first.size > 0 ? this.#first : this.#then;
        if (rule.asked > askedMost || !this.#workOut(next.pop())) return false;
      }
      const doubts = this.#doubts;
      this.#doubts = [];
      for (const doubt of doubts) {
        const byS = moreByDoubtS(rule, doubt);
        if (byS > 0) this.#tellMore(doubt.self >> 1, byS);
      }
    }
    return true;
  }

  /** False if it would rise for ever. */
  #workOut(activity: number): boolean {
    const { rule } = this;
    const near = activity * 2;
    this.#remember(activity);
    this.#then.delete(activity);
    const restaged = this.#restaged[activity] === 1;
    this.#restaged[activity] = 0;
    rule.askNear(activity);
    if (!this.#take(near, restaged)) return false;
    rule.askFar(activity);
    return this.#take(near + 1, restaged);
  }

  /** Takes the rule's answer for a node over, and tells whom that concerns. */
  #take(node: number, restaged: boolean): boolean {
    const { rule } = this;
    const beforeS = at(rule.timeS, node);
    if (!this.#loops.heed(node)) return false;
    for (const doubt of rule.doubts) this.#doubts.push(doubt);
    rule.take(node);
    const timeS = at(rule.timeS, node);
    if (timeS < beforeS || restaged) tellHanging(rule, node, timeS >= beforeS, this.#tell);
    if (timeS > beforeS || restaged) tellAskedMore(rule, node, this.#tellMore);
    return true;
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
    this.#doubts = [];
    this.#loops.forget((activity) => this.#isWith(activity, one));
    const others = this.#unmendable.filter((each) => !this.#isWith(each, one));
    this.#unmendable.splice(0, this.#unmendable.length, ...others);
    if (this.#mend()) return;
    this.#unmendable.push(one);
    this.#doubts = [];
    this.#loops.forget((activity) => this.#isWith(activity, one));
    while (this.#first.size > 0) this.#first.pop();
    while (this.#then.size > 0) this.#then.pop();
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
