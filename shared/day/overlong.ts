import { must } from '../kernel/index.ts';
import type { Live } from './live.ts';

/** So much longer than it may, and it is said; our choice. */
const SAID_S = 120;

/** How many rests, sets and holds will last longer than they may, as things stand. */
export function overlongIn(live: Live): number {
  const { tasks, activities } = live.index;
  let count = 0;
  for (const { id, work } of tasks.values()) {
    if (work !== 'wait') continue;
    const { stage, startS, endS } = live.timeline.times(id);
    const { length } = must(activities.get(id)?.modes[0], id);
    if (stage === 'done' || length.kind !== 'wait') continue;
    if (endS - startS > length.maxS + SAID_S) count++;
  }
  return count;
}
