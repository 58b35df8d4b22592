import type { Instant, TaskId } from '../kernel/index.ts';
import { instant } from '../kernel/index.ts';
import type { TaskView } from './view.ts';
import type { View } from './views.ts';
import { isWork } from './views.ts';

/**
 * The view with its times moved on to `now` by the lags that it carries, for a screen that has not
 * heard the hub or has taps the hub has not answered: what runs ends no sooner than now, what waits
 * starts no sooner than its lags and its hand allow. It knows less than the hub, so it never draws
 * a start forward past anything else that held it.
 * @example moveTimes(view, view.at) // the same times: the hub had moved them to then itself
 */
export function moveTimes<V extends View>(view: V, now: Instant): V {
  if (!isWork(view)) return view;
  const mover = new Mover(view.tasks, now);
  const tasks: readonly TaskView[] = view.tasks.map(({ id }, at) => mover.moved(id, at));
  return { ...view, tasks };
}

class Mover {
  readonly #now: Instant;
  readonly #tasks: readonly TaskView[];
  readonly #places: ReadonlyMap<TaskId, number>;
  readonly #moved = new Map<TaskId, TaskView>();

  constructor(tasks: readonly TaskView[], now: Instant) {
    this.#tasks = tasks;
    this.#now = now;
    this.#places = new Map(tasks.map(({ id }, place) => [id, place]));
  }

  moved(id: TaskId, place: number): TaskView {
    const known = this.#moved.get(id);
    if (known) return known;
    const task = this.#tasks[place] as TaskView;
    // Entered before it is worked out, so that a ring of lags would end.
    this.#moved.set(id, task);
    const moved = this.#move(task);
    this.#moved.set(id, moved);
    return moved;
  }

  #move(task: TaskView): TaskView {
    if (task.state === 'done') return task;
    if (task.state === 'running') return withEndFrom(task, this.#now);
    const known = [this.#now, ...this.#holdsOf(task)];
    const startAt = instant(Math.max(...known, ...(this.#isExplained(task) ? [] : [task.startAt])));
    return withStart(task, startAt);
  }

  /** Until when the tasks shown hold it: by its lags, and by the work its hand is at. */
  #holdsOf(task: TaskView): readonly number[] {
    const lags = task.after.flatMap(({ task: id, end, lagS }) => {
      const before = this.#find(id);
      return before ? [(end === 'start' ? before.startAt : before.endAt) + lagS * 1000] : [];
    });
    const busy = task.because?.kind === 'hand' ? this.#find(task.because.busyWith.id) : undefined;
    return busy ? [...lags, busy.endAt] : lags;
  }

  /**
   * Whether all that fixed its start is among the tasks shown, so that the start may also move
   * forward.
   */
  #isExplained({ because, after }: TaskView): boolean {
    if (because?.kind === 'after') {
      const { id } = because.task;
      return after.some(({ task }) => task === id);
    }
    if (because?.kind === 'hand') return this.#places.has(because.busyWith.id);
    return false;
  }

  #find(id: TaskId): TaskView | undefined {
    const place = this.#places.get(id);
    return place === undefined ? undefined : this.moved(id, place);
  }
}

function withEndFrom(task: TaskView, now: Instant): TaskView {
  if (task.endAt >= now && task.endLowAt >= now) return task;
  const noSooner = (at: Instant) => instant(Math.max(at, now));
  return {
    ...task,
    endAt: noSooner(task.endAt),
    endLowAt: noSooner(task.endLowAt),
    endHighAt: noSooner(task.endHighAt),
  };
}

function withStart(task: TaskView, startAt: Instant): TaskView {
  const byMs = startAt - task.startAt;
  if (byMs === 0) return task;
  return {
    ...task,
    startAt,
    endAt: instant(task.endAt + byMs),
    endLowAt: instant(task.endLowAt + byMs),
    endHighAt: instant(task.endHighAt + byMs),
  };
}
