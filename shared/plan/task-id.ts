import type { TaskId } from '../kernel/index.ts';

/** The schedule's name of a step of a batch. @example taskId('ribs-1', 'rub') //=> 'ribs-1/rub' */
export function taskId(batch: string, step: string): TaskId {
  return `${batch}/${step}` as TaskId;
}
