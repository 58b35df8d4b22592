import { BY, NOWHERE } from './by.ts';
import type { Facts } from './facts.ts';
import { DONE, RUNNING, WAITING } from './facts.ts';
import { BREAK_MOST_S, nextFit } from './hours.ts';
import type { LiveArcs } from './live-arcs.ts';
import type { LiveNet } from './live-net.ts';
import { UNBOUND } from './live-net.ts';
import { at } from './network.ts';
import type { Doubt, RuleOptions, Trust } from './rule-types.ts';

/**
 * The rule that says what one activity's times are, given all others': the greatest of what is
 * asked of them. A time never falls when another rises, so the least times that obey the rule
 * everywhere are well defined, in whatever order they are worked out. Facing backward it is the
 * same rule on the mirrored net.
 */
export class Rule {
  readonly net: LiveNet;
  readonly arcs: LiveArcs;
  readonly facts: Facts;
  /** Facing forward: how early each time may be on account of the plan. */
  readonly floorS: Int32Array;
  readonly timeS: Int32Array;
  /** The arc that each time hangs on, or one of `BY`; and the node that this comes from. */
  readonly by: Int32Array;
  readonly source: Int32Array;
  /** Arcs that cannot hold together with the others, and waits that cannot but be too long. */
  readonly givenUp = new Set<number>();
  readonly tooLong: Uint8Array;
  /** Who was not believed, by `trust`, in the last answer. */
  readonly doubts: Doubt[] = [];
  trust: Trust = 'all';
  /** How often an activity was asked for, in all. */
  asked = 0;
  /** The answer to the last question. */
  bestS = UNBOUND;
  bestBy: number = BY.hard;
  bestSource = NOWHERE;
  readonly #forward: boolean;
  /**
   * What turns a node of the arcs into the same node as this net faces it: its other end, or none.
   */
  readonly #flip: 0 | 1;
  readonly #heedsMaxima: boolean;

  constructor(net: LiveNet, { arcs, facts, floorS, heedsMaxima = true }: RuleOptions) {
    this.net = net;
    this.arcs = arcs;
    this.facts = facts;
    this.floorS = floorS;
    this.#forward = net.facing === 'forward';
    this.#flip = this.#forward ? 0 : 1;
    this.#heedsMaxima = heedsMaxima;
    const nodes = net.size * 2;
    this.timeS = new Int32Array(nodes).fill(UNBOUND);
    this.by = new Int32Array(nodes).fill(BY.hard);
    this.source = new Int32Array(nodes).fill(NOWHERE);
    this.tooLong = new Uint8Array(net.size);
  }

  /** Works out the near end. */
  askNear(activity: number, heedingHours = true): void {
    const { facts, net } = this;
    this.asked++;
    this.#begin();
    if (this.isNearFact(activity)) {
      this.#offer(this.#forward ? at(facts.startS, activity) : -at(facts.endS, activity), BY.fact);
      return;
    }
    this.#offer(at(net.hardS, activity * 2), BY.hard);
    if (this.#forward) {
      this.#offer(at(this.floorS, activity * 2), BY.plan);
      this.#offer(facts.nowS, BY.now);
      this.#offer(at(facts.heldS, activity), BY.held);
    }
    this.#offerAsked(activity, 0);
    // A maximum puts work off to the very minute it asks, hours or not: between a break and a wait
    // that is too long a person chooses. Put off further, it might go round in circles.
    if (!this.#forward) this.#offerAsked(activity, 1);
    if (heedingHours) this.bestS = this.inHours(activity, this.bestS);
    if (this.#forward) this.#offerAsked(activity, 1);
  }

  /** The far end, once the near end is known. */
  askFar(activity: number): void {
    const near = activity * 2;
    const far = near + 1;
    const { facts, net } = this;
    this.#begin();
    if (this.isFarFact(activity)) {
      this.#offer(this.#farFact(activity), BY.fact);
      return;
    }
    this.#offer(at(net.hardS, far), BY.hard);
    if (this.#forward) {
      if (net.isWork[activity] === 0) this.#offer(at(this.floorS, far), BY.plan);
      if (facts.stage[activity] === RUNNING) this.#offer(facts.nowS, BY.now);
    }
    const leastS = at(this.timeS, near) + at(facts.minS, activity);
    if (leastS > this.bestS) this.#offerLength(leastS, far);
    this.#offerArcs(far, far, 0, 0);
    this.#offerArcs(far, far, 0, 1);
  }

  /** Takes the last answer over for a node. */
  take(node: number): void {
    this.timeS[node] = this.bestS;
    this.by[node] = this.bestBy;
    this.source[node] = this.bestSource;
  }

  isNearFact(activity: number): boolean {
    const stage = at(this.facts.stage, activity);
    return this.#forward ? stage !== WAITING : stage === DONE;
  }

  /** Whether what is asked of its far end drives its near end on: it may be so long at most. */
  isDriven(activity: number): boolean {
    if (this.tooLong[activity] === 1 || this.isNearFact(activity)) return false;
    const isRunning = this.facts.stage[activity] === RUNNING;
    // How long running work will take is a forecast: nothing can ask it to be shorter or longer.
    if (this.net.isWork[activity] === 1) return !isRunning;
    return this.#heedsMaxima && (this.#forward || isRunning);
  }

  isFarFact(activity: number): boolean {
    const stage = at(this.facts.stage, activity);
    return this.#forward ? stage === DONE : stage !== WAITING;
  }

  isFact(node: number): boolean {
    return (node & 1) === 0 ? this.isNearFact(node >> 1) : this.isFarFact(node >> 1);
  }

  /** Where an arc comes from, and goes to, as this net faces it. */
  fromOf(arc: number): number {
    return this.#forward ? at(this.arcs.from, arc) : at(this.arcs.to, arc) ^ 1;
  }

  toOf(arc: number): number {
    return this.#forward ? at(this.arcs.to, arc) : at(this.arcs.from, arc) ^ 1;
  }

  /** Whether an arc asks anything, as things are. */
  holds(arc: number): boolean {
    if (this.arcs.off[arc] === 1 || (this.givenUp.size > 0 && this.givenUp.has(arc))) return false;
    const isBack = this.arcs.back[arc] === 1;
    if (isBack && !this.#heedsMaxima) return false;
    // What has happened is not to be late for, but from then on a maximum counts. What may still
    // move makes nothing late by its maximum: what that counts from can be put off as well.
    if (!this.#forward) return isBack === this.isFact(this.fromOf(arc));
    return !(isBack && this.#isRunningWorksEnd(this.toOf(arc)));
  }

  #isRunningWorksEnd(node: number): boolean {
    const activity = node >> 1;
    const isRunning = this.facts.stage[activity] === RUNNING;
    return (node & 1) === 1 && isRunning && this.net.isWork[activity] === 1;
  }

  #farFact(activity: number): number {
    return this.#forward ? at(this.facts.endS, activity) : -at(this.facts.startS, activity);
  }

  #begin(): void {
    this.bestS = UNBOUND;
    this.bestBy = BY.hard;
    this.bestSource = NOWHERE;
    this.doubts.length = 0;
  }

  #offer(timeS: number, by: number): void {
    if (timeS > this.bestS) this.#set(timeS, by, NOWHERE);
  }

  #set(timeS: number, by: number, source: number): void {
    this.bestS = timeS;
    this.bestBy = by;
    this.bestSource = source;
  }

  /** What it hung on otherwise before may be gone, and the near end be later because of it. */
  #offerLength(leastS: number, far: number): void {
    const hungOnIt = this.by[far] === BY.length;
    if (hungOnIt || !this.#isEcho(far - 1, far)) this.#set(leastS, BY.length, far - 1);
    else this.doubts.push({ self: far, from: far - 1, by: BY.length });
  }

  /**
   * What is asked of the near end, directly and by way of the far end; by maxima, or by the rest.
   */
  #offerAsked(activity: number, back: 0 | 1): void {
    const near = activity * 2;
    this.#offerArcs(near, near, 0, back);
    if (!this.isDriven(activity)) return;
    const mostS = at(this.facts.maxS, activity);
    if (this.isFarFact(activity)) this.#offer(this.#farFact(activity) - mostS, BY.fact);
    else {
      this.#offer(at(this.net.hardS, near + 1) - mostS, BY.hard);
      this.#offerArcs(near + 1, near, mostS, back);
    }
  }

  /** When an activity that is asked to begin then can begin by its hours. */
  inHours(activity: number, askedS: number): number {
    const { facts, net } = this;
    const hours = net.hours[activity];
    if (!hours || net.isWork[activity] === 0 || facts.stage[activity] !== WAITING) return askedS;
    const gapMostS = this.#forward ? BREAK_MOST_S : -UNBOUND;
    return nextFit(hours, askedS, at(facts.minS, activity), gapMostS);
  }

  /** Whether what an arc asks of a near end is put off to its hours (see `askNear`). */
  isPutToHours(arc: number): boolean {
    return !this.#forward || this.arcs.back[arc] === 0;
  }

  /** What arcs of one kind into a node ask of `self`, less so much. */
  #offerArcs(node: number, self: number, lessS: number, back: 0 | 1): void {
    const { arcs, timeS } = this;
    const flip = this.#flip;
    const tails = this.#forward ? arcs.from : arcs.to;
    const next = this.#forward ? arcs.nextInto : arcs.nextOut;
    let arc = at(this.#forward ? arcs.firstInto : arcs.firstOut, node ^ flip);
    for (; arc >= 0; arc = at(next, arc)) {
      if (arcs.back[arc] !== back) continue;
      const from = at(tails, arc) ^ flip;
      const asked = at(timeS, from) + at(arcs.weightS, arc) - lessS;
      if (asked <= this.bestS || !this.holds(arc)) continue;
      if (this.#isEcho(from, self)) this.doubts.push({ self, from, by: arc });
      else this.#set(asked, arc, from);
    }
  }

  /** Whether the time of `from` hangs on `self`. */
  #isEcho(from: number, self: number): boolean {
    // What hangs on it already does not hang on itself.
    if (this.trust === 'all' || this.source[self] === from) return false;
    const { component } = this.net;
    const isApart = component[from >> 1] !== component[self >> 1];
    if (isApart && this.arcs.added === 0) return false;
    let node = from;
    // Where all was raised from below, times that are equal may hang on each other for ever.
    for (let steps = 0; node !== NOWHERE; steps++) {
      if (node === self || steps > this.source.length) return true;
      node = at(this.source, node);
    }
    return false;
  }
}
