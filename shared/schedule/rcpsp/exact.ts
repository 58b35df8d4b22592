import { Branching, type Decision } from './branching.ts';
import { cell } from './cell.ts';
import { cliques } from './cliques.ts';
import { Conflicts } from './conflict.ts';
import { Corridor } from './corridor.ts';
import { type Disjunction, selected } from './disjunctions.ts';
import { Energy } from './energy.ts';
import type { Scheduled } from './genetic.ts';
import { LagRules } from './lag-rules.ts';
import { type LongestLags, longestLags, NO_LAG } from './longest-lags.ts';
import { Nogoods } from './nogoods.ts';
import type { Project } from './project.ts';
import { Propagation } from './propagation.ts';
import { reasonOf } from './reason.ts';
import { Timetable } from './timetable.ts';
import { atLeast, atMost, NO_REASON, Trail } from './trail.ts';

/** What a search within bounds came to; `best` is as good as `bound` where it is proven. */
export type Solved = {
  readonly status: 'optimal' | 'infeasible' | 'feasible' | 'unknown';
  readonly best: Scheduled | undefined;
  /** No schedule is shorter. */
  readonly bound: number;
  /** Contradictions that were learned from. */
  readonly conflicts: number;
};

export type ExactOptions = {
  /** Asked before each decision. */
  readonly shouldStop: () => boolean;
  /** A schedule found by other means: only shorter ones are looked for. */
  readonly known?: Scheduled;
};

/** Contradictions until the first restart; the next come by Luby's sequence. */
const RESTART_UNIT = 64;
/** Once there is a schedule, one round in so many looks everywhere, the others near it. */
const FAR_EVERY = 4;
/** Contradictions of a round near a schedule. */
const NEAR = 50;
/** Of rounds that look everywhere, one in so many goes along time, the others by contradictions. */
const ALONG_TIME_EVERY = 4;
/** Clauses kept before the first forgetting, and how many more each time. */
const CLAUSES = { first: 4_000, more: 500 };

/**
 * The shortest schedule under least and most lags, or a proof that there is none, or how far it got
 * when told to stop: lazy clause generation (O. Ohrimenko, P. J. Stuckey and M. Codish, Constraints
 * 14, 2009; for these problems Schutt, Feydy, Stuckey and Wallace 2013).
 */
export function solveExactly(project: Project, options: ExactOptions): Solved {
  const nothing = { best: undefined, bound: 0, conflicts: 0 };
  const longest = longestLags(project);
  if (longest === undefined || !isFillable(project)) return { ...nothing, status: 'infeasible' };
  const selection = selected(project, longest);
  if (selection === undefined) return { ...nothing, status: 'infeasible' };
  const horizon = options.known?.makespan ?? horizonOf(project);
  const values = initialBounds(longest, selection.open, horizon);
  if (values === undefined) return { ...nothing, status: 'infeasible' };
  const timetable = new Timetable(project, horizon);
  timetable.follow(values);
  const lags = new LagRules(project, selection.decided, selection.open);
  const energy = new Energy(project, cliques(project, longest));
  const nogoods = new Nogoods(values.length);
  const trail = new Trail(values, timetable);
  const propagation = new Propagation(trail, { lags, timetable, energy, nogoods });
  return new ExactSearch(project, propagation, options).run();
}

type Outcome = 'proven' | 'stopped' | 'restart';

class ExactSearch {
  readonly #options: ExactOptions;
  readonly #propagation: Propagation;
  readonly #trail: Trail;
  readonly #branching: Branching;
  readonly #corridor = new Corridor();
  readonly #conflicts: Conflicts;
  readonly #size: number;
  #best: Scheduled | undefined;
  #count = 0;
  #farRounds = 0;
  #bound = 0;

  constructor({ durations }: Project, propagation: Propagation, options: ExactOptions) {
    const { trail } = propagation;
    this.#options = options;
    this.#propagation = propagation;
    this.#trail = trail;
    this.#size = durations.length;
    this.#branching = new Branching(this.#size, trail.value.length / 2);
    this.#conflicts = new Conflicts(trail, propagation, (used) => this.#branching.use(used));
    this.#best = options.known;
  }

  run(): Solved {
    if (!this.#propagation.begin()) return this.#proven();
    if (this.#best !== undefined && !this.#improveOn(this.#best)) return this.#proven();
    let clauses = CLAUSES.first;
    for (let round = 1; ; round++) {
      const best = round % FAR_EVERY === 0 ? undefined : this.#best;
      const outcome = best === undefined ? this.#far() : this.#near(best);
      if (outcome === 'proven') return this.#proven();
      if (outcome === 'stopped') return this.#stopped();
      this.#backTo(0);
      if (this.#propagation.nogoods.count > clauses) {
        this.#propagation.nogoods.forgetHalf();
        clauses += CLAUSES.more;
      }
    }
  }

  #far(): Outcome {
    const round = ++this.#farRounds;
    const isAlongTime = round % ALONG_TIME_EVERY === 1;
    return this.#round(RESTART_UNIT * luby(round), (trail) =>
      isAlongTime ? undefined : this.#branching.byConflicts(trail),
    );
  }

  #near(best: Scheduled): Outcome {
    this.#corridor.draw(best);
    const outcome = this.#round(
      NEAR,
      (trail) => this.#corridor.next(trail) ?? this.#branching.byConflicts(trail),
    );
    this.#corridor.ended(this.#best !== best);
    return outcome;
  }

  /** Searches until a schedule, or so many contradictions. */
  #round(conflicts: number, choose: (trail: Trail) => Decision | undefined): Outcome {
    let left = conflicts;
    for (;;) {
      if (!this.#propagation.run()) {
        if (this.#trail.level === 0) return 'proven';
        this.#learn();
        left--;
        continue;
      }
      if (this.#trail.level === 0) this.#bound = cell(this.#trail.value, atLeast(this.#size - 1));
      if (this.#options.shouldStop()) return 'stopped';
      if (left <= 0) return 'restart';
      const decision = choose(this.#trail) ?? this.#branching.alongTime(this.#trail);
      if (decision === undefined) return this.#improveOn(this.#found()) ? 'restart' : 'proven';
      this.#trail.decide(decision.bound, decision.value);
    }
  }

  #learn(): void {
    const { clause, level } = this.#conflicts.learn();
    this.#count++;
    this.#branching.age();
    this.#backTo(level);
    const { nogoods } = this.#propagation;
    const reason = clause.length > 2 ? reasonOf('nogood', nogoods.add(clause)) : NO_REASON;
    this.#trail.push(cell(clause, 0), cell(clause, 1), reason);
  }

  #backTo(level: number): void {
    this.#trail.backTo(level);
    this.#propagation.wentBack();
  }

  #found(): Scheduled {
    const values = Int32Array.from({ length: this.#trail.value.length / 2 }, (_, variable) =>
      cell(this.#trail.value, atLeast(variable)),
    );
    this.#branching.favour(values);
    return { makespan: cell(values, this.#size - 1), starts: values.slice(0, this.#size) };
  }

  /** Asks for less from now on; false where nothing can be. */
  #improveOn(best: Scheduled): boolean {
    this.#best = best;
    this.#backTo(0);
    return this.#trail.push(atMost(this.#size - 1), 1 - best.makespan, NO_REASON);
  }

  #proven(): Solved {
    const best = this.#best;
    const bound = best?.makespan ?? this.#bound;
    const status = best === undefined ? 'infeasible' : 'optimal';
    return { status, best, bound, conflicts: this.#count };
  }

  #stopped(): Solved {
    const best = this.#best;
    const status = best === undefined ? 'unknown' : 'feasible';
    return { status, best, bound: this.#bound, conflicts: this.#count };
  }
}

/** Luby's sequence 1 1 2 1 1 2 4 …, counted from 1. */
function luby(index: number): number {
  let power = 1;
  while (2 * power <= index + 1) power *= 2;
  return power === index + 1 ? power / 2 : luby(index - power + 1);
}

function isFillable({ demands, capacities }: Project): boolean {
  return demands.every((demand, i) => demand <= cell(capacities, i % capacities.length));
}

/** If there is a schedule at all, there is one that ends by then. */
function horizonOf({ durations, lags }: Project): number {
  const longest = durations.slice();
  lags.from.forEach((from, lag) => {
    longest[from] = Math.max(cell(longest, from), cell(lags.least, lag));
  });
  return longest.reduce((sum, length) => sum + length, 0);
}

function initialBounds(
  { size, least }: LongestLags,
  open: readonly Disjunction[],
  horizon: number,
): Int32Array | undefined {
  const values = new Int32Array(2 * (size + open.length));
  for (let i = 0; i < size; i++) {
    const back = cell(least, i * size);
    const latest = Math.min(
      horizon - cell(least, i * size + size - 1),
      back === NO_LAG ? horizon : -back,
    );
    values[atLeast(i)] = cell(least, i);
    values[atMost(i)] = -latest;
    if (cell(least, i) > latest) return undefined;
  }
  for (let i = 0; i < open.length; i++) values[atMost(size + i)] = -1;
  return values;
}
