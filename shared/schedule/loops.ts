import { must } from '../kernel/index.ts';
import { askedOf, type Step } from './asking.ts';
import { NOWHERE } from './by.ts';
import { UNBOUND } from './live-net.ts';
import { at } from './network.ts';
import type { Rule } from './rule.ts';
import type { Doubt } from './rule-types.ts';

/** A way longer than this is not followed: then the part is worked out from the beginning. */
const STEPS_MOST = 4_096;
/** Each time round, hours put something off further; there are not so many breaks in a day. */
const ROUNDS_MOST = 64;

/**
 * A way from a node round to itself, by which it is asked for more than by all others. Its source
 * is then what it hung on without that, so that what hangs on what is a tree still.
 */
type Loop = {
  readonly steps: readonly Step[];
  /** What the node hung on without it. */
  readonly baseBy: number;
  readonly activities: ReadonlySet<number>;
};

/**
 * Why a time may be later than anything asks that does not hang on it: since maximum lags run back,
 * what hangs on a node may ask it for more, once hours have put something off further than it was
 * asked. Whoever hangs on a node is believed as far as the way from the node to it bears out what
 * it asks, begun from what the others ask of the node; the rest may be an old time coming back.
 */
export class Loops {
  readonly #rule: Rule;
  readonly #of: Map<number, Loop>;

  constructor(rule: Rule, of: ReadonlyMap<number, Loop> = new Map()) {
    this.#rule = rule;
    this.#of = new Map(of);
  }

  copy(rule: Rule): Loops {
    return new Loops(rule, this.#of);
  }

  /** Forgets those of such activities. */
  forget(isIts: (activity: number) => boolean): void {
    for (const node of this.#of.keys()) if (isIts(node >> 1)) this.#of.delete(node);
  }

  /** What the node hangs on, apart from a way round. */
  baseOf(node: number): number {
    return this.#of.get(node)?.baseBy ?? at(this.#rule.by, node);
  }

  /** Tells each whose way round leads over an activity with news, if that broke it. */
  tellBroken(activity: number, tell: (activity: number) => void): void {
    for (const [node, loop] of this.#of) {
      if (loop.activities.has(activity) && !this.#holds(node, loop)) tell(node >> 1);
    }
  }

  /** Whether a node still hangs on what it did, by its way round or now without. */
  #holds(node: number, { steps, baseBy }: Loop): boolean {
    const rule = this.#rule;
    const source = at(rule.source, node);
    if (source === NOWHERE || rule.isFact(node)) return false;
    const baseS = followed(rule, { to: node, by: baseBy }, at(rule.timeS, source));
    return this.#carried(node, baseS, steps) >= at(rule.timeS, node);
  }

  /**
   * Adds to the rule's answer for a node what those ask who hang on it, as far as they bear it out;
   * leaves as doubts who asks for more. False if the node would rise for ever.
   */
  heed(self: number): boolean {
    const rule = this.#rule;
    const known = this.#of.get(self);
    if (!known && rule.doubts.length === 0) return true;
    const baseBy = rule.bestBy;
    const steps: Step[] = [];
    const heeded = (way: readonly Step[]) => {
      const askedS = this.#carried(self, rule.bestS, way);
      if (askedS <= rule.bestS) return;
      rule.bestS = askedS;
      rule.bestBy = must(way.at(-1), 'a step').by;
      steps.push(...way);
    };
    if (known) heeded(known.steps);
    for (const doubt of rule.doubts) {
      for (let taken = -1, rounds = 0; taken < steps.length && asksMore(rule, doubt); rounds++) {
        if (rounds > ROUNDS_MOST || steps.length > STEPS_MOST) return false;
        taken = steps.length;
        heeded(this.#way(self, doubt, false));
        if (steps.length === taken) heeded(this.#way(self, doubt, true));
      }
    }
    if (steps.length === 0) this.#of.delete(self);
    else this.#of.set(self, { steps, baseBy, activities: new Set(steps.map(({ to }) => to >> 1)) });
    return true;
  }

  /** What a way round gives, if its node is at `fromS`. */
  #carried(self: number, fromS: number, way: readonly Step[]): number {
    let timeS = fromS;
    let selfS = fromS;
    for (const step of way) {
      timeS = followed(this.#rule, step, timeS);
      if (step.to === self) timeS = selfS = Math.max(timeS, selfS);
    }
    return way.length > 0 ? timeS : UNBOUND;
  }

  /** From a node to who asks it and hangs on it, and back; with ways round on it, or without. */
  #way(self: number, { from, by: last }: Doubt, isWhole: boolean): Step[] {
    const { by, source } = this.#rule;
    const way: Step[] = [{ to: self, by: last }];
    let node = from;
    while (node !== self) {
      if (node === NOWHERE || way.length > STEPS_MOST) return [];
      const loop = this.#of.get(node);
      if (loop && isWhole) for (const step of loop.steps.toReversed()) way.push(step);
      way.push({ to: node, by: loop?.baseBy ?? at(by, node) });
      node = at(source, node);
    }
    return way.reverse();
  }
}

/** Whether a doubted one asks for more than the answer so far. */
const asksMore = (rule: Rule, { self, from, by }: Doubt): boolean =>
  followed(rule, { to: self, by }, at(rule.timeS, from)) > rule.bestS;

/** What one step asks of where it leads, from `fromS` on; nothing where it holds no more. */
function followed(rule: Rule, step: Step, fromS: number): number {
  const { to, by } = step;
  const askedS = askedOf(rule, step, fromS);
  const isPutToHours = (to & 1) === 0 && rule.isPutToHours(by);
  return isPutToHours ? rule.inHours(to >> 1, askedS) : askedS;
}
