import type { ActivityId, Seconds } from '../kernel/index.ts';
import { seconds } from '../kernel/index.ts';
import type { End, GoalId, Lag } from './model.ts';
import type { Reason, Step, Timeline } from './timeline-types.ts';

export type Question =
  | { readonly activity: ActivityId; readonly end?: End }
  | { readonly goal: GoalId };

/**
 * Why an activity starts (or ends) when it does: what its time hangs on, what that hangs on, and so
 * on to a fact, the clock or the plan. For a goal, its critical chain. The thing asked about comes
 * last.
 */
export function why(timeline: Timeline, about: Question): Step[] {
  if ('goal' in about) return timeline.criticalChain(about.goal);
  const steps: Step[] = [];
  const seen = new Set<string>();
  let next: Lag['from'] | undefined = { activity: about.activity, end: about.end ?? 'start' };
  while (next) {
    const { activity, end }: Lag['from'] = next;
    if (seen.has(`${activity} ${end}`)) break;
    seen.add(`${activity} ${end}`);
    const reason = timeline.reason(activity, end);
    steps.push({ activity, end, atS: timeOf(timeline, next), reason, spareS: seconds(0) });
    next = behind(activity, reason);
  }
  return steps.reverse();
}

function timeOf(timeline: Timeline, { activity, end }: Lag['from']): Seconds {
  const { startS, endS } = timeline.times(activity);
  return end === 'start' ? startS : endS;
}

/** Whose time a reason goes back to. */
function behind(activity: ActivityId, reason: Reason): Lag['from'] | undefined {
  switch (reason.kind) {
    case 'length':
      return { activity, end: 'start' };
    case 'lag':
      return reason.bound === 'least' ? reason.lag.from : reason.lag.to;
    case 'yields':
      return reason.lag?.from ?? { activity, end: 'start' };
    case 'link':
      return { activity: reason.link.from, end: reason.link.after ?? 'end' };
    case 'shift':
      return behind(activity, reason.because);
    default:
      return undefined;
  }
}
