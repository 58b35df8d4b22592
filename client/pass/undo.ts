import type { DishId } from '../../shared/kernel/index.ts';
import type { Intent } from '../../shared/view/index.ts';

/** So long what a finger did can be taken back beside where it was. */
const UNDO_MS = 8000;

/** `back` is what takes it back. */
type Done = { readonly dish: DishId; readonly back: Intent; readonly until: number };

/** What fingers have just done at the pass, the last first; it passes by itself. */
export class JustDone {
  readonly #changed: () => void;
  #done: readonly Done[] = [];
  #timer: ReturnType<typeof setTimeout> | undefined;

  /** `changed` is called when something was done or has passed. */
  constructor(changed: () => void) {
    this.#changed = changed;
  }

  did(dish: DishId, back: Intent): void {
    const until = performance.now() + UNDO_MS;
    // All of a dish stay as long as the last of them: one who counts on may take back step by step.
    const same = this.#done.map((done) => (done.dish === dish ? { ...done, until } : done));
    this.#done = [{ dish, back, until }, ...same];
    this.#wait();
  }

  /** Takes the last of a dish off the list, to be taken back; null where there is none. */
  take(dish: DishId): Intent | null {
    const last = this.#done.find((done) => done.dish === dish);
    this.#done = this.#done.filter((done) => done !== last);
    this.#changed();
    return last?.back ?? null;
  }

  has(dish: DishId): boolean {
    return this.#done.some((done) => done.dish === dish);
  }

  stop(): void {
    clearTimeout(this.#timer);
  }

  #wait(): void {
    clearTimeout(this.#timer);
    const first = Math.min(...this.#done.map(({ until }) => until));
    if (Number.isFinite(first)) {
      this.#timer = setTimeout(() => this.#pass(), Math.max(0, first - performance.now()));
    }
    this.#changed();
  }

  #pass(): void {
    const now = performance.now();
    this.#done = this.#done.filter(({ until }) => until > now);
    this.#wait();
  }
}
