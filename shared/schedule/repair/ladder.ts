import { type ActivityId, assert, minutes, type Seconds } from '../../kernel/index.ts';
import type { Placement, Problem, Schedule } from '../model.ts';
import { LiveTimeline } from '../timeline.ts';
import type { Timeline } from '../timeline-types.ts';
import { type Difference, differencesBetween, taxS } from './differences.ts';
import { movedElsewhere, ordersTurned, plannedAnew } from './tries.ts';
import { isNone, isSlight, knownIn, savedS, type Trouble, troubleOf } from './trouble.ts';

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
  /** The day's own, less what nothing may be given to now; left out: all of it. */
  readonly problem?: Problem;
  /**
   * What something outside the schedule would hold, and till when, if the day were done so; left
   * out: what it holds now.
   */
  readonly heldIf?: (placements: readonly Placement[]) => ReadonlyMap<ActivityId, Seconds>;
  /** Whether nobody is to be asked for a day like that, whatever it saves; left out: for any. */
  readonly refuses?: (tried: Timeline) => boolean;
};

/** The usual least gain; our choice. */
const LEAST_GAIN_S = minutes(2);

/** So often one change more is made on one rung, where none was enough by itself; our choice. */
const ROUNDS = { order: 3, elsewhere: 4 };

type Tried = {
  readonly rung: Rung;
  readonly timeline: LiveTimeline;
  readonly trouble: Trouble;
  /** What it asks of those who would follow it, as seconds. */
  readonly taxS: number;
};

/**
 * Mends a day that will be late, or will break what may still be kept: the first rung that holds
 * is the answer, and if none does, that which saves most. On one rung, what changes least for those
 * who work near is taken. Nothing is changed: all but times is a proposal, for a person to take.
 */
export function repair(timeline: Timeline, options: RepairOptions): Repair {
  assert(timeline instanceof LiveTimeline, 'there is one kind of timeline');
  const { goals } = timeline.live.published.problem;
  const before = troubleOf(timeline, goals);
  const stands = timeline.schedule;
  const answer = (rung: Rung, mended: LiveTimeline): Repair => {
    const { schedule } = mended;
    const differences = mended === timeline ? [] : differencesBetween(stands, schedule);
    return { rung, schedule, before, after: troubleOf(mended, goals), differences };
  };
  if (isNone(before)) return answer(usesMargin(timeline) ? 'margin' : 'times', timeline);
  const best = climbed({ rung: 'as-it-is', timeline, trouble: before, taxS: 0 }, options);
  return answer(best.rung, best.timeline);
}

/** Rung after rung, until one holds; what saves most of all that was tried, if it saves enough. */
function climbed(stands: Tried, options: RepairOptions): Tried {
  const { timeline } = stands;
  const { seed, nearS, leastGainS = LEAST_GAIN_S } = options;
  const { problem = timeline.live.published.problem } = options;
  const { goals } = problem;
  const nowS = timeline.nowS ?? 0;
  const nearUntilS = nowS + nearS;
  const isNear = (id: ActivityId) => timeline.times(id).startS < nearUntilS;
  const known = knownIn(timeline);
  const rungs: readonly Step[] = [
    { rung: 'order', rounds: ROUNDS.order, tries: (from) => ordersTurned(from, goals) },
    {
      rung: 'elsewhere',
      rounds: ROUNDS.elsewhere,
      tries: (from) => movedElsewhere(from, problem, goals),
    },
    {
      rung: 'later-anew',
      rounds: 1,
      tries: () => plannedAnew(timeline, problem, { isFrozen: isNear, fromS: nearUntilS, seed }),
    },
    {
      rung: 'all-anew',
      rounds: 1,
      tries: () => plannedAnew(timeline, problem, { isFrozen: () => false, fromS: nowS, seed }),
    },
  ];
  let best = stands;
  for (const { rung, rounds, tries } of rungs) {
    for (let round = 0; round < rounds; round++) {
      const from = best;
      for (const mended of leastTaxed(tries(from.timeline), timeline, nearUntilS, options)) {
        const tried = { ...mended, rung, trouble: troubleOf(mended.timeline, goals, known) };
        if (isBetter(tried, best, leastGainS)) best = tried;
      }
      if (isSlight(best.trouble, leastGainS)) return savedEnough(best, stands, leastGainS);
      if (best === from) break;
    }
  }
  return savedEnough(best, stands, leastGainS);
}

type Step = {
  readonly rung: Rung;
  readonly rounds: number;
  readonly tries: (from: LiveTimeline) => LiveTimeline[];
};

/**
 * Whether it saves more than the best so far, and enough to be worth a word. What does not hold
 * either, and stands on another rung, has to pay for what more it asks of people, too.
 */
function isBetter(tried: Tried, best: Tried, leastGainS: number): boolean {
  const saved = savedS(best.trouble, tried.trouble);
  if (isSlight(tried.trouble, leastGainS) && !isSlight(best.trouble, leastGainS)) return saved > 0;
  const isOther = best.rung !== 'as-it-is' && best.rung !== tried.rung;
  return saved >= leastGainS + (isOther ? Math.max(0, tried.taxS - best.taxS) : 0);
}

const savedEnough = (best: Tried, stands: Tried, leastGainS: number) =>
  savedS(stands.trouble, best.trouble) >= leastGainS ? best : stands;

/** What asks least of those who work near comes first; each with what holds it if it is taken. */
function leastTaxed(
  tries: readonly LiveTimeline[],
  { schedule: stands }: LiveTimeline,
  nearUntilS: number,
  { heldIf, refuses }: RepairOptions,
) {
  return tries
    .flatMap((mended) => {
      if (heldIf) mended.held(heldIf(mended.schedule.placements));
      if (refuses?.(mended)) return [];
      const asked = taxS(differencesBetween(stands, mended.schedule), nearUntilS);
      return [{ timeline: mended, taxS: asked }];
    })
    .sort((a, b) => a.taxS - b.taxS);
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
