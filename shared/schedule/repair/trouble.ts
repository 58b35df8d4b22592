import { type Seconds, seconds } from '../../kernel/index.ts';
import type { Goal } from '../model.ts';
import type { Timeline } from '../timeline-types.ts';

/** What is wrong with a day as it stands: the less the better, an earlier line before a later. */
export type Trouble = {
  /** Seconds for which two things that must come one after the other are in one place at once. */
  readonly doubledS: Seconds;
  /** Seconds by which lags, waits, hours and deadlines will be broken that may still be kept. */
  readonly brokenS: Seconds;
  /** Seconds that goals will be late, each times its weight. */
  readonly lateS: Seconds;
};

/** The trouble of a day as it stands. */
export function troubleOf(timeline: Timeline, goals: readonly Goal[]): Trouble {
  const open = timeline.broken().filter((each) => !('settled' in each && each.settled));
  const sumOf = (isLink: boolean) =>
    open.reduce((sum, { kind, byS }) => sum + ((kind === 'link') === isLink ? byS : 0), 0);
  const lateS = goals.reduce((sum, { activity, end, dueS, weight }) => {
    const times = timeline.times(activity);
    return sum + weight * Math.max(0, times[`${end}S`] - dueS);
  }, 0);
  return {
    doubledS: seconds(sumOf(true)),
    brokenS: seconds(sumOf(false)),
    lateS: seconds(Math.round(lateS)),
  };
}

/** Whether all holds. */
export const isNone = ({ doubledS, brokenS, lateS }: Trouble) =>
  doubledS === 0 && brokenS === 0 && lateS === 0;

/** Below nought where the first is better. */
const compareTrouble = (a: Trouble, b: Trouble) =>
  a.doubledS - b.doubledS || a.brokenS - b.brokenS || a.lateS - b.lateS;

/** How many seconds of trouble are saved, of the first line that differs. */
export const savedS = (before: Trouble, after: Trouble) => -compareTrouble(after, before);
