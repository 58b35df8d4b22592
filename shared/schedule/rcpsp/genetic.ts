import { must, pickBelow, type Random, seeded } from '../../kernel/index.ts';
import { cell } from './cell.ts';
import { fingerprint } from './fingerprint.ts';
import { type Individual, individualOf } from './individual.ts';
import { packed } from './packing.ts';
import { mirrored, type Precedence } from './precedence.ts';
import type { Project } from './project.ts';
import { crossed, mutate } from './recombination.ts';
import { sampler } from './sampling.ts';
import { SerialScheme } from './serial-scheme.ts';

export type GeneticOptions = {
  readonly seed: number;
  /** How many activity lists to decode, at least one; each pass of justification is one. */
  readonly schedules: number;
  /** No schedule is shorter: once there, the search is over. */
  readonly bound: number;
  /** Asked once a generation. */
  readonly shouldStop?: () => boolean;
};

/** A schedule of a project: when each activity starts, and when the last ends. */
export type Scheduled = { readonly makespan: number; readonly starts: Int32Array };

/** Individuals for each root of the budget: few that live long for few schedules. */
const INDIVIDUALS_PER_ROOT = 0.6;
/** Of so many drawn for one place in the first population, the best. */
const SAMPLES_PER_PLACE = 2;
/** Of so many drawn, the best is the father. */
const TOURNAMENT = 2;
/** How often a child that is one period longer is let in all the same. */
const TOLERANCE = 0.5;
/** After so many generations without a shorter schedule, it begins anew. */
const GENERATIONS_IN_VAIN = 60;
/** How often a list that was decoded before is changed again. */
const CHANGES_AT_MOST = 5;

/**
 * The shortest schedule that a genetic search finds, the same for the same seed and budget.
 *
 * Two populations are bred in turn, one justified to the left and one to the right, each from the
 * schedules of the other read in the mirror (D. Debels and M. Vanhoucke, "A bi-population based
 * genetic algorithm for the RCPSP", ICCSA 2005). So each schedule decoded is a pass of
 * justification as well (V. Valls, F. Ballestín and S. Quintanilla, EJOR 165, 2005).
 * No list is decoded twice if that can be helped, and no schedule is let in twice: without that,
 * most of a long search on a small project goes into what it has seen.
 */
export function genetic(
  project: Project,
  precedence: Precedence,
  options: GeneticOptions,
): Scheduled {
  return new Evolution(project, precedence, options).run();
}

/** Which way time runs: 0 forward, 1 in the mirror. */
type Side = 0 | 1;
const other = (side: Side): Side => (side === 0 ? 1 : 0);

type Decoded = {
  readonly individual: Individual;
  /** Whether this schedule was never found before on its side. */
  readonly isNew: boolean;
};

class Evolution {
  readonly #options: GeneticOptions;
  readonly #random: Random;
  readonly #precedences: readonly [Precedence, Precedence];
  readonly #schemes: readonly [SerialScheme, SerialScheme];
  readonly #work: Float64Array;
  readonly #sample: () => Int32Array;
  /** By side, the fingerprints of the lists decoded. */
  readonly #lists = [new Set<number>(), new Set<number>()] as const;
  /** By side, the fingerprints of the schedules found. */
  readonly #schedules = [new Set<number>(), new Set<number>()] as const;
  #left: number;
  #best: Scheduled | undefined;

  constructor(project: Project, precedence: Precedence, options: GeneticOptions) {
    this.#options = options;
    this.#random = seeded(options.seed);
    this.#precedences = [precedence, mirrored(precedence)];
    const packing = packed(project);
    this.#schemes = [
      new SerialScheme(this.#precedences[0], packing),
      new SerialScheme(this.#precedences[1], packing),
    ];
    this.#work = workOf(project);
    this.#sample = sampler(precedence, this.#random);
    this.#left = Math.max(1, options.schedules);
  }

  run(): Scheduled {
    while (this.#evolve() === 'in-vain');
    return must(this.#best, 'a schedule, since one is always decoded');
  }

  /** From a first population until it is over, or nothing has come of it for long. */
  #evolve(): 'over' | 'in-vain' {
    const populations: [Individual[], Individual[]] = [this.#first(), []];
    let inVain = 0;
    for (let side: Side = 1; inVain < GENERATIONS_IN_VAIN; side = other(side)) {
      if (this.#over || this.#options.shouldStop?.()) return 'over';
      const before = this.#best;
      populations[side] = this.#generation(side, populations[other(side)], populations[side]);
      inVain = this.#best === before ? inVain + 1 : 0;
    }
    return 'in-vain';
  }

  #generation(side: Side, parents: Individual[], elders: Individual[]): Individual[] {
    return parents.map((mother, place) => {
      const elder = elders[place];
      if (this.#over) return elder ?? mother;
      if (elder === undefined) return this.#decode(side, mother.list).individual;
      const { individual, isNew } = this.#child(side, place, parents);
      return isNew && this.#isLetIn(individual, elder) ? individual : elder;
    });
  }

  get #over(): boolean {
    const found = this.#best?.makespan ?? Number.POSITIVE_INFINITY;
    return this.#left <= 0 || found <= this.#options.bound;
  }

  #first(): Individual[] {
    const size = Math.round(INDIVIDUALS_PER_ROOT * Math.sqrt(this.#options.schedules));
    const sampled: Individual[] = [];
    for (let i = 0; i < Math.max(2, size) * SAMPLES_PER_PLACE && !this.#over; i++) {
      sampled.push(this.#decode(0, this.#sample()).individual);
    }
    return sampled.sort((a, b) => a.makespan - b.makespan).slice(0, Math.max(2, size));
  }

  /** A child is decoded from a list that was not decoded before, if one is found. */
  #child(side: Side, place: number, parents: readonly Individual[]): Decoded {
    const mother = must(parents[place], 'the mother at her place');
    const list = crossed(mother, () => this.#father(place, parents), this.#random);
    const { after } = this.#precedences[side];
    for (let changes = 0; changes < CHANGES_AT_MOST; changes++) {
      mutate(list, after, this.#random);
      if (!this.#lists[side].has(fingerprint(list))) break;
    }
    return this.#decode(side, list);
  }

  /** The best of a few, none of them the mother. */
  #father(place: number, parents: readonly Individual[]): Individual {
    const drawn = Array.from({ length: TOURNAMENT }, () => {
      const away = 1 + pickBelow(this.#random, parents.length - 1);
      return must(parents[(place + away) % parents.length], 'a parent');
    });
    return drawn.reduce((best, next) => (next.makespan < best.makespan ? next : best));
  }

  /** A child as good takes the place of its elder, so that a population drifts on. */
  #isLetIn(child: Individual, elder: Individual): boolean {
    const tolerated = this.#random() < TOLERANCE ? 1 : 0;
    return child.makespan <= elder.makespan + tolerated;
  }

  #decode(side: Side, list: Int32Array): Decoded {
    this.#left--;
    this.#lists[side].add(fingerprint(list));
    const { durations } = this.#precedences[side];
    const starts = new Int32Array(durations.length);
    const makespan = this.#schemes[side].decode(list, starts);
    const turned = starts.map((start, i) => makespan - start - cell(durations, i));
    if (makespan < (this.#best?.makespan ?? Number.POSITIVE_INFINITY)) {
      this.#best = { makespan, starts: side === 0 ? starts : turned };
    }
    const found = this.#schedules[side].size;
    this.#schedules[side].add(fingerprint(starts));
    return {
      individual: individualOf(makespan, turned, this.#precedences[other(side)].order, this.#work),
      isNew: this.#schedules[side].size > found,
    };
  }
}

/** By activity, the capacity it takes of all resources, in shares, times how long. */
function workOf({ durations, demands, capacities }: Project): Float64Array {
  return Float64Array.from(durations, (duration, activity) => {
    const shares = Array.from(capacities, (capacity, kind) =>
      capacity === 0 ? 0 : cell(demands, activity * capacities.length + kind) / capacity,
    );
    return duration * shares.reduce((sum, share) => sum + share, 0);
  });
}
