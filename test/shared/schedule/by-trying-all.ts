import { seconds } from '../../../shared/kernel/index.ts';
import type {
  Activity,
  Placement,
  Problem,
  Schedule,
  Use,
} from '../../../shared/schedule/index.ts';
import { chain, check, type Mode } from '../../../shared/schedule/index.ts';

/**
 * The least that `value` can be over all schedules that the checker passes, found by trying every
 * mode, use, start and end of every activity; undefined where none passes. For the smallest days.
 */
export function leastByTryingAll(
  problem: Problem,
  value: (schedule: Schedule) => number,
): number | undefined {
  const options = problem.activities.map((activity) => placementsOf(problem, activity));
  let least: number | undefined;
  const place = (placements: readonly Placement[]) => {
    const next = options[placements.length];
    if (!next) {
      const schedule = { placements, links: chain(problem, placements) };
      if (check(problem, schedule).length > 0) return;
      least = Math.min(least ?? Number.POSITIVE_INFINITY, value(schedule));
      return;
    }
    const known = new Set(problem.activities.slice(0, placements.length + 1).map(({ id }) => id));
    const part = partOf(problem, known);
    for (const option of next) {
      const more = [...placements, option];
      if (check(part, { placements: more, links: [] }).length === 0) place(more);
    }
  };
  place([]);
  return least;
}

/** The problem of some activities alone: what it does not allow, the whole does not. */
function partOf(problem: Problem, known: ReadonlySet<string>): Problem {
  const isKnown = ({ activity }: { readonly activity: string }) => known.has(activity);
  return {
    ...problem,
    activities: problem.activities.filter(({ id }) => known.has(id)),
    lags: problem.lags.filter(({ from, to }) => isKnown(from) && isKnown(to)),
    clashes: problem.clashes.filter(({ upper, lower }) => isKnown(upper) && isKnown(lower)),
    goals: problem.goals.filter(isKnown),
  };
}

function placementsOf({ horizonS }: Problem, activity: Activity): Placement[] {
  return activity.modes.flatMap((mode) =>
    usesOf(mode).flatMap((uses) =>
      lengthsOf(mode).flatMap((lengthS) =>
        Array.from({ length: Math.max(0, horizonS - lengthS + 1) }, (_, startS) => ({
          activity: activity.id,
          mode: mode.id,
          startS: seconds(startS),
          endS: seconds(startS + lengthS),
          uses,
        })),
      ),
    ),
  );
}

function lengthsOf({ length }: Mode): number[] {
  if (length.kind === 'work') return [length.typicalS];
  return Array.from({ length: length.maxS - length.minS + 1 }, (_, i) => length.minS + i);
}

function usesOf({ needs }: Mode): Use[][] {
  return needs.reduce<Use[][]>(
    (all, { oneOf }, need) =>
      all.flatMap((uses) => oneOf.map((resource) => [...uses, { need, resource }])),
    [[]],
  );
}
