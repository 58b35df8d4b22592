import { type Random, seeded } from '../kernel/index.ts';
import { attempt } from './attempt.ts';
import { boundOf } from './bound/index.ts';
import { Descent } from './descent/index.ts';
import { solveExactly } from './exact/index.ts';
import { generate } from './generate.ts';
import { goalBound } from './goal-bound.ts';
import type { Problem, Schedule } from './model.ts';
import type { Net, Slot } from './net.ts';
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
  /** Whether that is reached: by a bound that meets it, or because all else was tried. */
  readonly isProven: boolean;
  readonly steps: number;
};

/** Days of so many activities are solved exactly, in so many nodes at the most for each aim. */
const EXACT_MOST = 15;
const NODES_MOST = 4_000;

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
    const descent = new Descent(standing.net, standing.slots, this.#measure, leastS);
    let isBetter = false;
    while (!this.#isOver() && !descent.isProven) {
      isBetter = descent.step(this.#random) || isBetter;
      this.#steps++;
    }
    if (isBetter) this.#take(standing.net, descent.best);
    return this.#answer(leastS);
  }

  #answer(aheadLeastS: number): Improved {
    const [schedule, before, worth] = [this.#best, this.#before, this.#worth];
    const isProven = worth.aheadS <= aheadLeastS;
    return { schedule, before, worth, aheadLeastS, isProven, steps: this.#steps };
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

type Standing = { readonly net: Net; readonly aim: number; readonly slots: readonly Slot[] };
