import type {
  Improved,
  ImproveOptions,
  Link,
  Placement,
  Planner,
  Problem,
  Schedule,
  Violation,
  Worth,
} from '../schedule/index.ts';
import type { BuiltDay } from './built.ts';
import { type DayPlanned, pinned, wishesOf } from './plan-day.ts';
import { withRounds } from './rounds.ts';

/** How good a plan was and is, and how far it may be from the best. */
export type Bettering = {
  readonly before: Worth;
  readonly after: Worth;
  /** No plan that keeps the same wishes has an `aheadS` below this. */
  readonly aheadLeastS: number;
  /** What `aheadS` is divided by for how far ahead one activity is, in the mean. */
  readonly weight: number;
};

type Planned = Extract<DayPlanned, { ok: true }>;

/** The better plan of a day, or the one that there was, and how far it may be from the best. */
export type DayBettered = Planned & Bettering & { readonly isBetter: boolean };

/** What the engine does for it; it knows no kitchens. */
export type BetterEngine = {
  readonly planner: Planner;
  improve(problem: Problem, schedule: Schedule, options: ImproveOptions): Improved;
  chain(problem: Problem, placements: readonly Placement[]): Link[];
  check(problem: Problem, schedule: Schedule): Violation[];
};

/**
 * Looks for a better plan of a day, and keeps what was wished for in the one that there is. The
 * rounds are laid anew round the better one, and it has to hold with them.
 */
export function betterDay(
  day: BuiltDay,
  planned: Planned,
  engine: BetterEngine,
  options: ImproveOptions,
): DayBettered {
  const known = new Set(day.problem.activities.map(({ id }) => id));
  const placements = planned.schedule.placements.filter(({ activity }) => known.has(activity));
  const { schedule, bettering } = bettered(day, placements, engine, options);
  const asItWas = { ...planned, ...bettering, after: bettering.before, isBetter: false };
  if (!schedule) return asItWas;
  const whole = withRounds(day, schedule);
  const { planner } = engine;
  const settled = planner(pinned(whole.day.problem, whole.schedule), { seed: options.seed });
  if (!settled.ok) return asItWas;
  return { ok: true, day: whole.day, schedule: settled.schedule, ...bettering, isBetter: true };
}

/**
 * The same for what is placed so, without its rounds; no schedule where none that is better was
 * found.
 */
export function bettered(
  day: BuiltDay,
  placements: readonly Placement[],
  { improve, chain, check }: Omit<BetterEngine, 'planner'>,
  options: ImproveOptions,
): { readonly schedule: Schedule | null; readonly bettering: Bettering } {
  const keeps = (wish: Problem) =>
    check(wish, { placements, links: chain(wish, placements) }).length === 0;
  const wish = wishesOf(day).find(keeps) ?? day.problem;
  const schedule = { placements, links: chain(wish, placements) };
  const better = improve(wish, schedule, options);
  const { worth: after, before, aheadLeastS, weight } = better;
  return {
    schedule: better.schedule === schedule ? null : better.schedule,
    bettering: { before, after, aheadLeastS, weight },
  };
}
