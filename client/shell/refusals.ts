import type { TaskId } from '../../shared/kernel/index.ts';
import { isWork } from '../../shared/view/index.ts';
import type { Say } from '../../shared/words/index.ts';
import { clockTime, sayRefusal, textIn, ui } from '../../shared/words/index.ts';
import type { LineRefusal } from '../parts/line-strip.ts';
import type { StrayRefusal } from '../parts/wall-notice.ts';
import type { RefusedTap, Sync, SyncState } from '../sync/index.ts';

/** The first unread refusal of a tap on this task. */
export function refusalOf({ refused, view }: SyncState, task: TaskId): LineRefusal | null {
  const found = refused.find((tap) => taskOf(tap, view) === task);
  if (!found) return null;
  return { id: found.command.id, refusal: found.refusal, unread: refused.length };
}

/**
 * The first unread refusal whose line is not among those shown, with the name of what was tapped.
 */
export function strayRefusal(
  { refused, view }: SyncState,
  shown: readonly TaskId[],
  say: Say,
): StrayRefusal | null {
  const stray = refused.find((tap) => !shown.some((id) => id === taskOf(tap, view)));
  if (!stray) return null;
  const id = taskOf(stray, view);
  const task = view && isWork(view) ? view.tasks.find((each) => each.id === id) : undefined;
  const words = ui[say.language];
  const title = task
    ? textIn(task.title, say)
    : words.tapAt(clockTime(stray.command.tappedAt, say));
  return { id: stray.command.id, title, refusal: stray.refusal, unread: refused.length };
}

/** Somebody has read them all. */
export function readAll(sync: Sync): void {
  for (const { command } of sync.state.refused) sync.seen(command.id);
}

/** The newest unread refusal as a sentence. */
export function saidOf({ refused }: SyncState, say: Say): string {
  const newest = refused.at(-1);
  return newest ? sayRefusal(newest.refusal, say) : '';
}

/** Of a tub, the work that fills it. */
function taskOf({ command }: RefusedTap, view: SyncState['view']): TaskId | null {
  if ('task' in command) return command.task;
  if (command.kind !== 'weighTub' || !view || !isWork(view)) return null;
  return view.tasks.find(({ batch, tubs }) => tubs && batch === command.batch)?.id ?? null;
}
