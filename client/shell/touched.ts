import type { TaskId } from '../../shared/kernel/index.ts';
import type { Intent } from '../../shared/view/index.ts';

/** So long what a finger did stays where the finger was, to be undone. */
const UNDO_MS = 8000;
/** So long a line that a finger picked from below stays up. */
const PICKED_MS = 30_000;

export type Undoable = 'start' | 'finish';

type Touch = {
  readonly until: number;
  readonly undo: Undoable | null;
  /** The undo passes sooner than the line where that is used for something more. */
  readonly undoUntil: number;
};

/** What fingers have just done on this wall; it is nobody else's business, and passes by itself. */
export class Touched {
  readonly #touches = new Map<TaskId, Touch>();
  readonly #changed: () => void;
  #timer: ReturnType<typeof setTimeout> | undefined;

  /** `changed` is called when something has passed. */
  constructor(changed: () => void) {
    this.#changed = changed;
  }

  did(intent: Intent): void {
    const until = performance.now() + UNDO_MS;
    if (intent.kind === 'start' || intent.kind === 'finish') {
      this.#hold(intent.task, { undo: intent.kind, until, undoUntil: until });
    } else if (intent.kind === 'takeBack') {
      this.#hold(intent.task, { undo: null, until, undoUntil: until });
    }
  }

  /** It was chosen, or something is typed on it; what may be undone there still may. */
  picked(task: TaskId): void {
    const until = performance.now() + PICKED_MS;
    const { undo = null, undoUntil = until } = this.#touches.get(task) ?? {};
    this.#hold(task, { undo, until, undoUntil });
  }

  /** A refusal came: there is nothing to undo. */
  drop(task: TaskId): void {
    this.#touches.delete(task);
  }

  get held(): ReadonlySet<TaskId> {
    return new Set(this.#touches.keys());
  }

  undoOf(task: TaskId): Undoable | null {
    return this.#touches.get(task)?.undo ?? null;
  }

  stop(): void {
    clearTimeout(this.#timer);
  }

  #hold(task: TaskId, touch: Touch): void {
    this.#touches.set(task, touch);
    this.#wait();
    this.#changed();
  }

  #wait(): void {
    clearTimeout(this.#timer);
    const first = Math.min(...[...this.#touches.values()].map(passesAt));
    if (Number.isFinite(first)) {
      this.#timer = setTimeout(() => this.#pass(), Math.max(0, first - performance.now()));
    }
  }

  #pass(): void {
    const now = performance.now();
    for (const [task, touch] of this.#touches) {
      if (touch.until <= now) this.#touches.delete(task);
      else if (touch.undoUntil <= now) this.#touches.set(task, { ...touch, undo: null });
    }
    this.#wait();
    this.#changed();
  }
}

const passesAt = ({ until, undo, undoUntil }: Touch) => (undo ? Math.min(until, undoUntil) : until);
