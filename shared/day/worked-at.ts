import type { SlotId, TaskId } from '../kernel/index.ts';
import type { Task } from '../plan/index.ts';
import { loadsOf } from './arrangement.ts';
import { groupBy, type PlanIndex, stepsOf } from './plan-index.ts';
import type { DayState } from './state.ts';

/**
 * The slots in which a task's pieces lie, or are to lie, while it is done: from their loading to
 * their taking off, each once. None where they are not at a smoker.
 */
export function slotsWorkedAt(state: DayState, index: PlanIndex, task: TaskId): SlotId[] {
  const stays = staysOver(index).get(task) ?? [];
  const slots = stays.flatMap((stay) => loadsOf(state, index, stay).map(({ slot }) => slot));
  return [...new Set(slots)];
}

/** An index never changes, and every line of every screen asks. */
const remembered = new WeakMap<PlanIndex, ReadonlyMap<TaskId, readonly TaskId[]>>();

function staysOver(index: PlanIndex): ReadonlyMap<TaskId, readonly TaskId[]> {
  const known = remembered.get(index) ?? readStays(index);
  remembered.set(index, known);
  return known;
}

/** The stays of each task that is done at them. */
function readStays(index: PlanIndex): ReadonlyMap<TaskId, readonly TaskId[]> {
  const tasks = [...index.tasks.values()];
  const stays = groupBy(
    tasks.filter(({ work }) => work === 'place'),
    ({ batch }) => batch,
  );
  return new Map(
    tasks
      .filter(({ work }) => work === 'hands')
      .map((task) => {
        const over = (stays.get(task.batch) ?? []).filter((stay) => isWithin(index, task, stay));
        return [task.id, over.map(({ id }) => id)];
      }),
  );
}

function isWithin(index: PlanIndex, { batch, step }: Task, stay: Task): boolean {
  const steps = stepsOf(index, batch);
  const lain = steps.find(({ id }) => id === stay.step);
  if (lain?.work !== 'place') return false;
  const placeOf = (sought: string) => steps.findIndex(({ id }) => id === sought);
  const at = placeOf(step);
  return placeOf(lain.spans.from.step) <= at && at <= placeOf(lain.spans.to.step);
}
