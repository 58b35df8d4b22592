import { type ActivityId, type Seconds, seconds } from '../../kernel/index.ts';
import type { Activity, Lag, Length, Mode, Placement, Problem, Use } from '../model.ts';
import type { Timeline } from '../timeline-types.ts';

export type Leaving = {
  readonly isFrozen: (activity: ActivityId) => boolean;
  /** Done by the same hands in the same places, at any time. */
  readonly stays: (activity: ActivityId) => boolean;
  /** Nothing else begins sooner. */
  readonly fromS: number;
  readonly lateS: (goal: Problem['goals'][number]) => number;
};

/**
 * What is left of a day as a problem: facts are pinned, and so is what `isFrozen`; the rest waits
 * for now. What facts have made impossible is asked for no more than as it stands, so that the
 * times of the live day keep all of it but, perhaps, goals: these may be late by `lateS`.
 */
export function remainingOf(
  problem: Problem,
  timeline: Timeline,
  { isFrozen, stays, fromS, lateS }: Leaving,
): Problem {
  const { placements } = timeline.schedule;
  const byActivity = new Map(placements.map((each) => [each.activity, each]));
  const lastS = Math.max(problem.horizonS, ...placements.map(({ endS }) => endS));
  return {
    ...problem,
    horizonS: seconds(lastS),
    activities: problem.activities.map((activity) => {
      const placement = byActivity.get(activity.id);
      return placement ? left(activity, placement, { timeline, fromS, isFrozen, stays }) : activity;
    }),
    lags: problem.lags.map((lag) => asItStands(lag, byActivity)),
    goals: problem.goals.map((goal) => ({ ...goal, dueS: seconds(goal.dueS + lateS(goal)) })),
  };
}

type Now = Omit<Leaving, 'lateS'> & { readonly timeline: Timeline };

function left(
  activity: Activity,
  placement: Placement,
  { timeline, fromS, isFrozen, stays }: Now,
): Activity {
  const { stage } = timeline.times(activity.id);
  const { mode, startS, endS, uses } = placement;
  const lengthS = endS - startS;
  const modes = activity.modes.map((each) => (each.id === mode ? lasting(each, lengthS) : each));
  const isWait = modes.find(({ id }) => id === mode)?.length.kind === 'wait';
  const { deadlineS } = activity;
  const deadline = deadlineS === undefined ? {} : { deadlineS: latest(deadlineS, endS) };
  const pinned = (pin: { startS: Seconds; endS?: Seconds }): Activity => ({
    id: activity.id,
    modes,
    ...deadline,
    pin: { mode, uses: [...uses] as Use[], ...pin },
  });
  if (stage === 'running' && isWait) return pinned({ startS });
  if (stage !== 'waiting' || isFrozen(activity.id)) return pinned({ startS, endS });
  const releaseS = latest(activity.releaseS ?? seconds(0), seconds(fromS));
  const its = { ...activity, modes, ...deadline, releaseS };
  return stays(activity.id) ? { ...its, pin: { mode, uses } } : its;
}

const latest = (a: Seconds, b: Seconds) => (a > b ? a : b);

/** A way to do it that may last as long as it does now. */
const lasting = (mode: Mode, lengthS: number): Mode => ({
  ...mode,
  length: lengthWith(mode.length, seconds(lengthS)),
});

function lengthWith(length: Length, lengthS: Seconds): Length {
  if (length.kind === 'work') {
    return { kind: 'work', lowS: lengthS, typicalS: lengthS, highS: lengthS };
  }
  const [minS, maxS] = [
    length.minS < lengthS ? length.minS : lengthS,
    latest(length.maxS, lengthS),
  ];
  return { kind: 'wait', minS, maxS };
}

function asItStands(lag: Lag, stands: ReadonlyMap<ActivityId, Placement>): Lag {
  const time = ({ activity, end }: Lag['from']) => stands.get(activity)?.[`${end}S`] ?? 0;
  const betweenS = seconds(time(lag.to) - time(lag.from));
  return {
    ...lag,
    ...(lag.minS !== undefined && lag.minS > betweenS && { minS: betweenS }),
    ...(lag.maxS !== undefined && lag.maxS < betweenS && { maxS: betweenS }),
  };
}
