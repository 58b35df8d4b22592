import type { Live } from '../day/index.ts';
import type { Seconds, TaskId } from '../kernel/index.ts';
import { must, seconds } from '../kernel/index.ts';
import type { TaskView } from './view.ts';

type Lags = ReadonlyMap<TaskId, Seconds>;

/** How many tasks that are not shown a lag is followed through. */
const THROUGH = 4;

/**
 * The lags among the tasks that a face shows, also through the smoke and the rests between them,
 * which are not shown: so a screen that is alone can move the times of what it shows. Two lines
 * often wait for the same smoke: what leads to it is worked out once.
 */
export class LagsAmong {
  readonly #live: Live;
  readonly #shown: ReadonlySet<TaskId>;
  readonly #known: readonly Map<TaskId, Lags>[];

  constructor(live: Live, shown: ReadonlySet<TaskId>) {
    this.#live = live;
    this.#shown = shown;
    this.#known = Array.from({ length: THROUGH + 1 }, () => new Map());
  }

  into(task: TaskId): TaskView['after'] {
    return [...this.#into(task, THROUGH)].map(([from, lagS]) => ({ task: from, end: 'end', lagS }));
  }

  /** The longest from each shown task, through so many others at most. */
  #into(to: TaskId, through: number): Lags {
    const memo = must(this.#known[through], 'a depth');
    const known = memo.get(to);
    if (known) return known;
    const longest = new Map<TaskId, Seconds>();
    for (const { from, to: into, minS } of this.#live.leastLagsInto(to)) {
      if (from.end !== 'end' || into.end !== 'start') continue;
      const task = from.activity;
      if (this.#shown.has(task)) keepLonger(longest, task, minS);
      else if (through > 0) {
        const { startS, endS } = this.#live.timesOf(task);
        const lags = this.#into(task, through - 1);
        for (const [shown, lagS] of lags) keepLonger(longest, shown, lagS + endS - startS + minS);
      }
    }
    memo.set(to, longest);
    return longest;
  }
}

function keepLonger(longest: Map<TaskId, Seconds>, task: TaskId, lagS: number): void {
  if (lagS > (longest.get(task) ?? -1)) longest.set(task, seconds(lagS));
}
