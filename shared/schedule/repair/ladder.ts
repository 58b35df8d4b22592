import { type ActivityId, assert, minutes, type Seconds } from '../../kernel/index.ts';
import type { Schedule } from '../model.ts';
import { LiveTimeline } from '../timeline.ts';
import type { Timeline } from '../timeline-types.ts';
import { type Difference, differencesBetween, taxS } from './differences.ts';
import { movedElsewhere, ordersTurned, plannedAnew } from './tries.ts';
import { isNone, savedS, type Trouble, troubleOf } from './trouble.ts';

/**
 * How much had to be changed for a day to hold again, the least first: nothing but times; the
 * margin of waits; an order on one thing; one hand, place or way; what is not near; everything that
 * has not begun. `as-it-is`: nothing that was tried helps enough.
 */
export type Rung =
  | 'times'
  | 'margin'
  | 'order'
  | 'elsewhere'
  | 'later-anew'
  | 'all-anew'
  | 'as-it-is';

export type Repair = {
  readonly rung: Rung;
  /** The day as it would be. */
  readonly schedule: Schedule;
  readonly before: Trouble;
  readonly after: Trouble;
  /** What a person is asked to agree to; empty where times alone have moved. */
  readonly differences: readonly Difference[];
};

export type RepairOptions = {
  readonly seed: number;
  /** What starts within this time from now is near, and is not planned anew if that helps. */
  readonly nearS: Seconds;
  /** Less trouble saved than this is not worth a word: nothing shown is moved for it. */
  readonly leastGainS?: Seconds;
};

/** The usual least gain; our choice. */
const LEAST_GAIN_S = minutes(2);

type Tried = { readonly timeline: LiveTimeline; readonly rung: Rung };

/**
 * Mends a day that will be late, or will break what may still be kept: the first rung that holds
 * is the answer, and if none does, that which saves most. On one rung, what changes least for those
 * who work near is taken. Nothing is changed: all but times is a proposal, for a person to take.
 */
export function repair(timeline: Timeline, options: RepairOptions): Repair {
  assert(timeline instanceof LiveTimeline, 'there is one kind of timeline');
  const { seed, nearS, leastGainS = LEAST_GAIN_S } = options;
  const { problem } = timeline.live.published;
  const { goals } = problem;
  const before = troubleOf(timeline, goals);
  const stands = timeline.schedule;
  const answer = (rung: Rung, mended: LiveTimeline): Repair => {
    const { schedule } = mended;
    const differences = mended === timeline ? [] : differencesBetween(stands, schedule);
    return { rung, schedule, before, after: troubleOf(mended, goals), differences };
  };
  if (isNone(before)) return answer(usesMargin(timeline) ? 'margin' : 'times', timeline);
  const nearUntilS = (timeline.nowS ?? 0) + nearS;
  const isNear = (id: ActivityId) => timeline.times(id).startS < nearUntilS;
  const rungs: readonly (readonly [Rung, () => LiveTimeline[]])[] = [
    ['order', () => ordersTurned(timeline, goals)],
    ['elsewhere', () => movedElsewhere(timeline, problem, goals)],
    ['later-anew', () => plannedAnew(timeline, problem, isNear, seed)],
    ['all-anew', () => plannedAnew(timeline, problem, () => false, seed)],
  ];
  let best: (Tried & { readonly trouble: Trouble }) | undefined;
  for (const [rung, tries] of rungs) {
    for (const mended of leastTaxed(tries(), stands, nearUntilS)) {
      const trouble = troubleOf(mended, goals);
      const least = best?.trouble ?? before;
      if (savedS(least, trouble) >= leastGainS || (isNone(trouble) && !isNone(least))) {
        best = { timeline: mended, rung, trouble };
      }
    }
    if (best && isNone(best.trouble)) break;
  }
  return best && savedS(before, best.trouble) >= leastGainS
    ? answer(best.rung, best.timeline)
    : answer('as-it-is', timeline);
}

/** What asks least of those who work near comes first. */
function leastTaxed(tries: readonly LiveTimeline[], stands: Schedule, nearUntilS: number) {
  return tries
    .map((mended) => ({
      mended,
      taxS: taxS(differencesBetween(stands, mended.schedule), nearUntilS),
    }))
    .sort((a, b) => a.taxS - b.taxS)
    .map(({ mended }) => mended);
}

/** Whether a wait that is not over is shorter than it was published. */
function usesMargin(timeline: LiveTimeline): boolean {
  const { placements, problem } = timeline.live.published;
  return placements.some(({ activity, startS, endS, mode }, i) => {
    const length = problem.activities[i]?.modes.find(({ id }) => id === mode)?.length;
    if (length?.kind !== 'wait' || timeline.times(activity).stage === 'done') return false;
    const now = timeline.times(activity);
    return now.endS - now.startS < endS - startS;
  });
}
