import { NOWHERE } from './by.ts';
import { tellDependents } from './dependents.ts';
import { Detours } from './detours.ts';
import { raiseAll } from './from-scratch.ts';
import { Heap } from './heap.ts';
import { UNBOUND } from './live-net.ts';
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
  readonly #tell = (activity: number) => this.mark(activity);
  /** Activities worked out in this settling, with the times they had before. */
  readonly #visited: number[] = [];
  readonly #seen: Uint8Array;
  readonly #beforeS: Int32Array;
  /** Activities whose arcs ask something else now, though their times be the same. */
  readonly #restaged: Uint8Array;
  readonly #detours: Detours;
  /** False where arcs had to be given up: then every change is worked out from scratch. */
  #isMendable = true;

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
    labels.#startOver();
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
    copy.#isMendable = this.#isMendable;
    return copy;
  }

  /** Marks an activity about which something is news; `restaged` if it has started or finished. */
  mark(activity: number, restaged = false): void {
    this.#queue.set(activity, at(this.rule.net.rank, activity));
    if (restaged) this.#restaged[activity] = 1;
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
    if (this.#queue.size > 0 && !(this.#isMendable && this.#mend())) this.#startOver();
    const { timeS } = this.rule;
    const changed = this.#visited.filter(
      (a) => timeS[a * 2] !== this.#beforeS[a * 2] || timeS[a * 2 + 1] !== this.#beforeS[a * 2 + 1],
    );
    for (const activity of this.#visited) this.#seen[activity] = 0;
    this.#visited.length = 0;
    return changed;
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
      this.mark(self >> 1);
      this.#detours.leadRound(self >> 1, from);
    }
    rule.doubts.length = 0;
    return count;
  }

  #startOver(): void {
    const { rule } = this;
    const { size } = rule.net;
    for (let activity = 0; activity < size; activity++) this.#remember(activity);
    for (let activity = 0; activity < size; activity++) this.mark(activity);
    rule.timeS.fill(UNBOUND);
    rule.source.fill(NOWHERE);
    rule.givenUp.clear();
    rule.tooLong.fill(0);
    rule.doubts.length = 0;
    this.#detours.clear();
    this.#isMendable = this.#mend();
    if (this.#isMendable) return;
    while (this.#queue.size > 0) this.#queue.pop();
    this.#restaged.fill(0);
    raiseAll(rule);
  }

  #remember(activity: number): void {
    if (this.#seen[activity] === 1) return;
    this.#seen[activity] = 1;
    this.#visited.push(activity);
    this.#beforeS[activity * 2] = at(this.rule.timeS, activity * 2);
    this.#beforeS[activity * 2 + 1] = at(this.rule.timeS, activity * 2 + 1);
  }
}
