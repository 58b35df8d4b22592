import { pickBelow, type Random } from '../../kernel/index.ts';
import { mirroredSlots } from '../attempt.ts';
import { Generation, type Pass } from '../generate.ts';
import { goalBound } from '../goal-bound.ts';
import { mirrored } from '../mirror.ts';
import type { Net, Slot } from '../net.ts';
import { at } from '../network.ts';
import type { Measure } from '../worth.ts';
import { type Neighbourhoods, neighbourhoodsOf } from './neighbourhoods.ts';

/**
 * A worse schedule is gone on from while it is worse than the best by no more than this part of
 * what the best is over the bound (G. Dueck, Journal of Computational Physics 104, 1993).
 */
const DEVIATION = 0.02;
/** A placing of so many activities takes no more steps than so many for each, and a few. */
const STEPS_PER_ACTIVITY = 4;
const STEPS_LEAST = 20;
const NOISES_S = [0, 600, 3_600];

/**
 * Takes some activities off a schedule and puts them back as late as they can be in another order,
 * step by step. It sees the day in the mirror, so that late is early. What no goal waits for stays.
 */
export class Descent {
  readonly #net: Net;
  readonly #measure: Measure;
  readonly #boundS: number;
  readonly #generation: Generation;
  readonly #neighbourhoods: Neighbourhoods;
  /** What chance adds to the keys of those that are taken off. */
  readonly #ownS: Float64Array;
  /** As placed now, and the best there was; both in the mirror. */
  readonly #now: Slot[];
  readonly #best: Slot[];
  readonly #startsS: number[];
  /** Where these two differ. */
  readonly #differing = new Set<number>();
  readonly #changesS: number[];
  #sums: Sums;
  #bestSums: Sums;

  constructor(net: Net, slots: readonly (Slot | undefined)[], measure: Measure, boundS: number) {
    const mirror = mirrored(net);
    const only = goalBound(net);
    this.#net = net;
    this.#measure = measure;
    this.#boundS = boundS;
    this.#generation = new Generation(mirror, { only });
    const seen = mirroredSlots(mirror, slots).flatMap((slot) => (slot ? [slot] : []));
    this.#now = seen;
    this.#best = [...seen];
    this.#startsS = seen.map(({ startS }) => startS);
    seen.forEach((slot, activity) => {
      this.#generation.arrangement.place(activity, slot);
    });
    const movable = [...only].filter((activity) => !net.modes[activity]?.[0]?.anyHour);
    this.#neighbourhoods = movable.length > 0 ? neighbourhoodsOf(mirror, movable) : () => new Set();
    this.#ownS = new Float64Array(net.size);
    this.#changesS = net.resources.map((_, i) => this.#generation.arrangement.changesS(i));
    const aheadS = seen.reduce((sum, slot, i) => sum + this.#aheadOf(i, slot), 0);
    this.#sums = { aheadS, changesS: this.#changesS.reduce((sum, s) => sum + s, 0) };
    this.#bestSums = this.#sums;
  }

  /** The best so far, not in the mirror. */
  get best(): readonly (Slot | undefined)[] {
    return mirroredSlots(this.#net, this.#best);
  }

  get isProven(): boolean {
    return this.#bestSums.aheadS <= this.#boundS && this.#bestSums.changesS === 0;
  }

  /** One step; whether it led to a better schedule than all before. */
  step(random: Random): boolean {
    const taken = this.#neighbourhoods(random, this.#now);
    if (taken.size === 0) return false;
    const { arrangement, touched } = this.#generation;
    touched.clear();
    arrangement.takeOff(taken);
    const made = this.#generation.run(this.#pass(taken, random));
    const sums = made.ok ? this.#sumsAfter() : undefined;
    if (!sums || !this.#isAccepted(sums)) {
      this.#undo();
      return false;
    }
    arrangement.forgetPushes();
    return this.#accept(sums);
  }

  #pass(taken: ReadonlySet<number>, random: Random): Pass {
    const kind = pickBelow(random, 3);
    const order = kind === 0 ? 'soonest' : kind === 1 ? 'urgent' : this.#startsS;
    const noiseS = at(NOISES_S, pickBelow(random, NOISES_S.length));
    for (const activity of taken) this.#ownS[activity] = random() * noiseS;
    return { order, ownS: this.#ownS, stepsMost: STEPS_LEAST + taken.size * STEPS_PER_ACTIVITY };
  }

  #isAccepted({ aheadS, changesS }: Sums): boolean {
    const best = this.#bestSums;
    const mostS = best.aheadS + DEVIATION * Math.max(0, best.aheadS - this.#boundS);
    return aheadS < mostS || (aheadS === mostS && changesS <= best.changesS);
  }

  /** What the sums are with what was touched; undefined where something lost its place. */
  #sumsAfter(): Sums | undefined {
    const { arrangement, touched } = this.#generation;
    let { aheadS, changesS } = this.#sums;
    for (const activity of touched) {
      const slot = arrangement.slotOf(activity);
      if (!slot) return undefined;
      aheadS += this.#aheadOf(activity, slot) - this.#aheadOf(activity, this.#nowOf(activity));
    }
    for (const resource of this.#statesTouched()) {
      changesS += arrangement.changesS(resource) - at(this.#changesS, resource);
    }
    return { aheadS, changesS };
  }

  #accept(sums: Sums): boolean {
    const { arrangement, touched } = this.#generation;
    for (const resource of this.#statesTouched()) {
      this.#changesS[resource] = arrangement.changesS(resource);
    }
    for (const activity of touched) {
      const slot = arrangement.slotOf(activity);
      if (slot) this.#now[activity] = slot;
      this.#startsS[activity] = this.#nowOf(activity).startS;
      this.#differing.add(activity);
    }
    this.#sums = sums;
    const best = this.#bestSums;
    const isBetter =
      sums.aheadS < best.aheadS || (sums.aheadS === best.aheadS && sums.changesS < best.changesS);
    if (!isBetter) return false;
    this.#bestSums = sums;
    for (const activity of this.#differing) this.#best[activity] = this.#nowOf(activity);
    this.#differing.clear();
    return true;
  }

  #undo(): void {
    const { arrangement, touched } = this.#generation;
    const back = [...touched];
    arrangement.takeOff(back);
    for (const activity of back) arrangement.place(activity, this.#nowOf(activity));
  }

  /** State resources that what was touched needs, or needed. */
  #statesTouched(): Set<number> {
    const { arrangement, touched } = this.#generation;
    const resources = new Set<number>();
    for (const activity of touched) {
      for (const { resource } of this.#nowOf(activity).mode.states) resources.add(resource);
      const slot = arrangement.slotOf(activity);
      for (const { resource } of slot?.mode.states ?? []) resources.add(resource);
    }
    return resources;
  }

  #aheadOf(activity: number, { startS }: Slot): number {
    const { weights, dueS } = this.#measure;
    return at(weights, activity) * (at(dueS, activity) + startS);
  }

  #nowOf(activity: number): Slot {
    return this.#now[activity] as Slot;
  }
}

type Sums = { readonly aheadS: number; readonly changesS: number };
