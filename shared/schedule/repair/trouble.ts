import { minutes, type Seconds, seconds } from '../../kernel/index.ts';
import type { Goal } from '../model.ts';
import type { Broken, Timeline } from '../timeline-types.ts';

/** What is wrong with a day as it stands: the less the better, an earlier line before a later. */
export type Trouble = {
  /** Seconds for which two things that must come one after the other are in one place at once. */
  readonly doubledS: Seconds;
  /** Seconds by which something is broken that was kept before, or was broken by less. */
  readonly worseS: Seconds;
  /**
   * Seconds that goals will be late, each times its weight; what a goal is later than a
   * quarter of an hour counts twice.
   */
  readonly lateS: Seconds;
  /** Seconds by which lags, waits, hours and deadlines will be broken that may still be kept. */
  readonly brokenS: Seconds;
};

/** By how much each thing is broken, by its name. */
type Known = ReadonlyMap<string, number>;

/**
 * From here on each second late counts for two: one who waits for half an hour is worse off than
 * ten who wait for three minutes. A quarter of an hour is our choice.
 */
const MUCH_S = minutes(15);

/** The trouble of a day as it stands; nothing of it is worse than before where nothing is known. */
export function troubleOf(timeline: Timeline, goals: readonly Goal[], known?: Known): Trouble {
  const open = openIn(timeline);
  const sumOf = (isLink: boolean, byS: (each: Broken) => number) =>
    open.reduce((sum, each) => sum + ((each.kind === 'link') === isLink ? byS(each) : 0), 0);
  const lateS = goals.reduce((sum, { activity, end, dueS, weight }) => {
    const times = timeline.times(activity);
    const goalS = Math.max(0, times[`${end}S`] - dueS);
    return sum + weight * (goalS + Math.max(0, goalS - MUCH_S));
  }, 0);
  const worseS = (each: Broken) =>
    known ? Math.max(0, each.byS - (known.get(nameOf(each)) ?? 0)) : 0;
  return {
    doubledS: seconds(sumOf(true, ({ byS }) => byS)),
    worseS: seconds(sumOf(false, worseS)),
    lateS: seconds(Math.round(lateS)),
    brokenS: seconds(sumOf(false, ({ byS }) => byS)),
  };
}

/** What is broken now, to tell later what is so by more. */
export const knownIn = (timeline: Timeline): Known =>
  new Map(openIn(timeline).map((each) => [nameOf(each), each.byS]));

function nameOf(broken: Broken): string {
  switch (broken.kind) {
    case 'lag': {
      const { from, to, reason } = broken.lag;
      return `lag ${from.activity} ${from.end} ${to.activity} ${to.end} ${reason}`;
    }
    case 'link':
      return `link ${broken.link.from} ${broken.link.to} ${broken.link.resource}`;
    case 'wait':
      return `wait ${broken.activity} ${broken.bound}`;
    default:
      return `${broken.kind} ${broken.activity}`;
  }
}

/** What will not be kept and may still be mended: of two in one place, one has not begun. */
export function openIn(timeline: Timeline): Broken[] {
  return timeline.broken().filter((each) => {
    if (each.kind === 'link') return timeline.times(each.link.to).stage === 'waiting';
    return !('settled' in each && each.settled);
  });
}

/** Whether all holds. */
export const isNone = ({ doubledS, brokenS, lateS }: Trouble) =>
  doubledS === 0 && brokenS === 0 && lateS === 0;

/** Whether what is wrong is not worth moving anything for: little, and no two in one place. */
export const isSlight = ({ doubledS, brokenS, lateS }: Trouble, leastS: number) =>
  doubledS === 0 && brokenS < leastS && lateS < leastS;

/** How many seconds of trouble are saved, of the first line that differs. */
export const savedS = (before: Trouble, after: Trouble) =>
  before.doubledS - after.doubledS ||
  before.worseS - after.worseS ||
  before.lateS - after.lateS ||
  before.brokenS - after.brokenS;
