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

/** A better plan of a day, how much better, and how far it may be from the best. */
export type DayBettered = Extract<DayPlanned, { ok: true }> & {
  readonly before: Worth;
  readonly after: Worth;
  /** No plan that keeps the same wishes has an `aheadS` below this. */
  readonly aheadLeastS: number;
};

/** What the engine does for it; it knows no kitchens. */
export type BetterEngine = {
  readonly planner: Planner;
  improve(problem: Problem, schedule: Schedule, options: ImproveOptions): Improved;
  chain(problem: Problem, placements: readonly Placement[]): Link[];
  check(problem: Problem, schedule: Schedule): Violation[];
};

/**
 * Looks for a better plan of a day, and keeps what was wished for in the one that there is. The
 * rounds are laid anew round the better one. Null where none is found, or none that holds with
 * its rounds.
 */
export function betterDay(
  day: BuiltDay,
  planned: Extract<DayPlanned, { ok: true }>,
  { planner, improve, chain, check }: BetterEngine,
  options: ImproveOptions,
): DayBettered | null {
  const known = new Set(day.problem.activities.map(({ id }) => id));
  const placements = planned.schedule.placements.filter(({ activity }) => known.has(activity));
  const keeps = (wish: Problem) =>
    check(wish, { placements, links: chain(wish, placements) }).length === 0;
  const wish = wishesOf(day).find(keeps) ?? day.problem;
  const schedule = { placements, links: chain(wish, placements) };
  const better = improve(wish, schedule, options);
  if (better.schedule === schedule) return null;
  const whole = withRounds(day, better.schedule);
  const settled = planner(pinned(whole.day.problem, whole.schedule), { seed: options.seed });
  if (!settled.ok) return null;
  const { worth: after, before, aheadLeastS } = better;
  return { ok: true, day: whole.day, schedule: settled.schedule, before, after, aheadLeastS };
}
