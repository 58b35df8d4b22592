import type { MendFact } from './mend-fact.ts';
import { passagesOf } from './passage.ts';
import type { DayState } from './state.ts';
import { factsOf, loadKey } from './state.ts';

/**
 * Who does what where from then on. Whom a task was given to before, or where a load was moved to,
 * is part of what was decided now; what has begun stays as it is.
 */
export function afterMend(state: DayState, { changes }: Pick<MendFact, 'changes'>): DayState {
  const passages = passagesOf(state);
  const open = changes.filter(({ activity }) => passages.get(activity)?.startedAt == null);
  const arranged = new Map(state.arranged);
  const tasks = new Map(state.tasks);
  const slots = new Map(state.slots);
  for (const { activity, mode, uses } of open) {
    arranged.set(activity, { mode, uses });
    slots.delete(loadKey(activity, 0));
    const facts = factsOf(state, activity);
    if (facts.hand !== null) tasks.set(activity, { ...facts, hand: null });
  }
  return { ...state, arranged, tasks, slots };
}
