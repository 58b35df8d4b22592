import type { Step } from '../catalogue/index.ts';
import type { Live } from '../day/index.ts';
import { must } from '../kernel/index.ts';
import type { Batch, Task } from '../plan/index.ts';
import type { Say } from '../words/index.ts';
import type { PaperWords } from './phrases.ts';

/** What every part of a sheet is made from: the day, how its reader wants it said, fixed words. */
export type Press = { readonly live: Live; readonly say: Say; readonly words: PaperWords };

/** The batch that a task is done to. */
export function batchOf({ live }: Press, task: Task): Batch {
  return must(live.index.batches.get(task.batch), task.batch);
}

/** The step of the catalogue that a task came from; undefined where it is to no batch. */
export function stepOf(press: Press, task: Task): Step | undefined {
  const { index } = press.live;
  const { catalogue } = index.plan;
  if (!index.batches.has(task.batch)) return undefined;
  const route = catalogue.routes.find(({ id }) => id === batchOf(press, task).route);
  return must(
    route?.steps.find(({ id }) => id === task.step),
    task.id,
  );
}
