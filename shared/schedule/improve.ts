import { type Random, seeded } from '../kernel/index.ts';
import { attempt, placedAgain } from './attempt.ts';
import { boundOf } from './bound/index.ts';
import { Descent } from './descent/index.ts';
import { solveExactly } from './exact/index.ts';
import { generate } from './generate.ts';
import { goalBound } from './goal-bound.ts';
import type { Problem, Schedule } from './model.ts';
import type { Net, Slot } from './net.ts';
import { at } from './network.ts';
import { scheduleOf, slotsOf } from './schedule-of.ts';
import { AIMS, netAiming } from './search.ts';
import { compareWorth, type Measure, measureOf, type Worth, worthOf } from './worth.ts';

export type ImproveOptions = {
  readonly seed: number;
  /** After so many steps it ends; each takes some activities off and puts them back. */
  readonly steps: number;
  /** Asked before each step. */
  readonly shouldStop?: () => boolean;
};

export type Improved = {
  /** As good as the one given, or better. */
  readonly schedule: Schedule;
  /** Of the schedule given, and of this one. */
  readonly before: Worth;
  readonly worth: Worth;
  /** No schedule whose waits are as long has an `aheadS` below this. */
  readonly aheadLeastS: number;
  /** What `aheadS` is divided by for how far ahead one activity is, in the mean. */
  readonly weight: number;
  /** Whether that is reached: by a bound that meets it, or because all else was tried. */
  readonly isProven: boolean;
  readonly steps: number;
};

/** Days of so many activities are solved exactly, in so many nodes at the most for each aim. */
const EXACT_MOST = 15;
const NODES_MOST = 4_000;

/** On smaller days single steps get as far as soon, and are not led into a corner so easily. */
const GREAT = 500;
/** How much each whole placing anew is shaken. */
const NOISES_S = [0, 0, 900, 900, 1_800, 900, 3_600, 900];
/** Steps without a better schedule before another start is tried; more on greater days. */
const IDLE_LEAST = 200;
const SHAKEN_S = 3_600;
/** Attempts with longer waits than the schedule has, before it is gone on from. */
const ATTEMPTS_TO_LENGTHEN = 3;

/**
 * Looks for a better schedule of the same problem, from one that keeps it (goals may be late: they
 * are made no later). The same seed and steps give the same answer, unless it is stopped before.
 */
export function improve(problem: Problem, schedule: Schedule, options: ImproveOptions): Improved {
  return new Improvement(problem, schedule, options).run();
}

class Improvement {
  readonly #problem: Problem;
  readonly #measure: Measure;
  readonly #options: ImproveOptions;
  readonly #random: Random;
  readonly #lateS: readonly number[];
  readonly #before: Worth;
  #best: Schedule;
  #worth: Worth;
  #steps = 0;

  constructor(problem: Problem, schedule: Schedule, options: ImproveOptions) {
    this.#problem = problem;
    this.#options = options;
    this.#random = seeded(options.seed);
    this.#measure = measureOf(problem);
    this.#best = schedule;
    this.#before = worthOf(problem, schedule, this.#measure);
    this.#worth = this.#before;
    const ends = new Map(schedule.placements.map((each) => [each.activity, each]));
    this.#lateS = problem.goals.map(({ activity, end, dueS }) =>
      Math.max(0, (ends.get(activity)?.[`${end}S`] ?? dueS) - dueS),
    );
  }

  run(): Improved {
    const isSmall = this.#problem.activities.length <= EXACT_MOST;
    const standing = this.#lengthened(this.#standing());
    if (isSmall && this.#isSolved(standing)) return this.#answer(this.#worth.aheadS);
    const leastS = boundOf(standing.net, this.#measure) ?? 0;
    const better = this.#descended(standing, leastS);
    if (better !== standing.slots) this.#take(standing.net, better);
    return this.#answer(leastS);
  }

  /** From one start after the other, each until it has not got better for long. */
  #descended(standing: Standing, leastS: number): Slots {
    const { net } = standing;
    const idleMost = IDLE_LEAST + 2 * net.size;
    let from = this.#placedAgain(standing);
    let best: Slots = from;
    for (let start = 1; !this.#isOver(); start++) {
      const descent = new Descent(net, from, this.#measure, leastS);
      for (let idle = 0; idle < idleMost && !this.#isOver() && !descent.isProven; idle++) {
        if (descent.step(this.#random)) idle = 0;
        this.#steps++;
      }
      if (from === best || this.#isBetter(descent.best, best)) best = descent.best;
      if (descent.isProven) break;
      from = this.#newStart(net, best, start);
    }
    return best;
  }

  /** By turns the best one shaken, and a day planned from nothing. */
  #newStart(net: Net, best: Slots, number: number): Slots {
    this.#steps++;
    const random = this.#random;
    const boostS = new Float64Array(net.size);
    const made =
      number % 2 === 1
        ? attempt(net, { number: number + 2, random, boostS })
        : placedAgain(net, best, SHAKEN_S, random);
    return made.ok ? made.slots : best;
  }

  #answer(aheadLeastS: number): Improved {
    const [schedule, before, worth] = [this.#best, this.#before, this.#worth];
    const isProven = worth.aheadS <= aheadLeastS;
    const weight = this.#measure.weights.reduce((sum, each) => sum + each, 0);
    return { schedule, before, worth, aheadLeastS, weight, isProven, steps: this.#steps };
  }

  /** Whether the schedule that stands is now as good as any with waits of its length. */
  #isSolved({ net }: Standing): boolean {
    const { shouldStop } = this.#options;
    const solved = solveExactly(net, this.#measure, {
      belowS: this.#worth.aheadS,
      nodesMost: NODES_MOST,
      ...(shouldStop && { shouldStop }),
    });
    if (solved.slots) this.#take(net, solved.slots);
    return solved.status === 'proven';
  }

  #isOver(): boolean {
    return this.#steps >= this.#options.steps || (this.#options.shouldStop?.() ?? false);
  }

  /** The schedule with the net that gives its waits the most of their margin that they have. */
  #standing(): Standing {
    for (const aim of [...new Set([...AIMS, 0])]) {
      const net = this.#netAiming(aim);
      const slots = net && slotsOf(this.#problem, net, this.#best);
      if (net && slots) return { net, aim, slots };
    }
    throw new Error('a schedule that keeps its problem has waits of their least length');
  }

  /** Another schedule, whose waits are longer, if one is found at once. */
  #lengthened(standing: Standing): Standing {
    const boostS = new Float64Array(this.#problem.activities.length);
    for (const aim of new Set(AIMS.filter((each) => each > standing.aim))) {
      const net = this.#netAiming(aim);
      for (let number = 0; net && number < ATTEMPTS_TO_LENGTHEN; number++) {
        if (this.#isOver()) return standing;
        this.#steps++;
        const made = attempt(net, { number, random: this.#random, boostS });
        if (!made.ok || !this.#takeSlots(made.slots)) continue;
        return { net, aim, slots: made.slots.flatMap((slot) => (slot ? [slot] : [])) };
      }
    }
    return standing;
  }

  /** The day placed anew as a whole a few times, for what that brings at once; the best of it. */
  #placedAgain({ net, slots }: Standing): Slots {
    let best: Slots = slots;
    if (net.size < GREAT) return best;
    for (const noiseS of NOISES_S) {
      if (this.#isOver()) break;
      this.#steps++;
      const made = placedAgain(net, best, noiseS, this.#random);
      if (made.ok && this.#isBetter(made.slots, best)) best = made.slots;
    }
    return best;
  }

  #isBetter(slots: Slots, than: Slots): boolean {
    return this.#aheadOf(slots) < this.#aheadOf(than);
  }

  #aheadOf(slots: Slots): number {
    const { weights, dueS } = this.#measure;
    return slots.reduce((sum, slot, i) => {
      return sum + at(weights, i) * (at(dueS, i) - (slot?.endS ?? 0));
    }, 0);
  }

  #netAiming(aim: number): Net | undefined {
    return netAiming(this.#problem, { aim, lateS: this.#lateS }).net;
  }

  /** What no goal waits for goes to where there is room now, as early as it can be. */
  #take(net: Net, slots: readonly (Slot | undefined)[]): void {
    const bound = goalBound(net);
    const placed = slots.map((slot, activity) => (bound.has(activity) ? slot : undefined));
    const rest = generate(net, {
      order: 'urgent',
      noiseS: 0,
      random: this.#random,
      boostS: new Float64Array(net.size),
      stepsMost: net.size * 2,
      placed,
    });
    if (!(rest.ok && this.#takeSlots(rest.slots))) this.#takeSlots(slots);
  }

  /** Whether these make a better schedule. */
  #takeSlots(slots: readonly (Slot | undefined)[]): boolean {
    const schedule = scheduleOf(this.#problem, slots);
    const worth = worthOf(this.#problem, schedule, this.#measure);
    if (compareWorth(worth, this.#worth) >= 0) return false;
    this.#best = schedule;
    this.#worth = worth;
    return true;
  }
}

type Slots = readonly (Slot | undefined)[];
type Standing = { readonly net: Net; readonly aim: number; readonly slots: readonly Slot[] };
