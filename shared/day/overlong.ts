import type { Instant, Seconds, TaskId, Text } from '../kernel/index.ts';
import { must, seconds } from '../kernel/index.ts';
import type { Task } from '../plan/index.ts';
import type { Live } from './live.ts';
import { watchedIn } from './watched.ts';

/** So much longer than it may, and it is said; our choice. */
const SAID_S = 120;

/** A rest, a set or a hold that will last longer than it may, as things stand. */
export type Overlong = {
  readonly task: TaskId;
  readonly title: Text;
  readonly batch: Text;
  readonly from: Instant;
  readonly until: Instant;
  /** From here on it is longer than it may be. */
  readonly overAt: Instant;
  readonly mostS: Seconds;
  readonly byS: Seconds;
  /** What ends it; null where that is the end of its service. */
  readonly next: { readonly title: Text; readonly at: Instant } | null;
  /** It keeps food to be sold: what is left when its time is over is thrown out. */
  readonly isSold: boolean;
};

/** Those whose time is over first come first. */
export function overlongIn(live: Live): Overlong[] {
  return [...live.index.tasks.values()]
    .flatMap((task) => overlongOf(live, task) ?? [])
    .sort((a, b) => a.overAt - b.overAt);
}

function overlongOf(live: Live, { id, work, title, batch }: Task): Overlong | null {
  if (work !== 'wait') return null;
  const { activities, groups } = live.index;
  const watched = watchedIn(live.index).get(batch);
  // Serving goes on for as long as there are guests: that is no rest and no hold.
  if (watched?.serve === id) return null;
  const { stage, startS, endS } = live.timeline.times(id);
  const { length } = must(activities.get(id)?.modes[0], id);
  if (stage === 'done' || length.kind !== 'wait') return null;
  const byS = seconds(endS - startS - length.maxS);
  if (byS <= SAID_S) return null;
  return {
    task: id,
    title,
    batch: must(groups.get(batch), batch).name,
    from: live.instantOf(startS),
    until: live.instantOf(endS),
    overAt: live.instantOf(seconds(startS + length.maxS)),
    mostS: length.maxS,
    byS,
    next: nextAfter(live, id),
    isSold: watched?.places.some(({ task }) => task === id) ?? false,
  };
}

function nextAfter(live: Live, wait: TaskId): Overlong['next'] {
  const { tasks, plan } = live.index;
  const after = plan.built.problem.lags.find(
    ({ from, to }) => from.activity === wait && from.end === 'end' && to.end === 'start',
  );
  const task = after && tasks.get(after.to.activity);
  return task ? { title: task.title, at: live.instantOf(live.timesOf(task.id).startS) } : null;
}
