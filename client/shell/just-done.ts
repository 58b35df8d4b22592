import type { Intent } from '../../shared/view/index.ts';

/** So long what a finger did can be taken back beside where it was. */
const UNDO_MS = 8000;

/** `about` is the id of what it was done to, `back` what takes it back. */
type Done = { readonly about: string; readonly back: Intent; readonly until: number };

/** What fingers have just done on a screen, the last first; it passes by itself. */
export class JustDone {
  readonly #changed: () => void;
  #done: readonly Done[] = [];
  #timer: ReturnType<typeof setTimeout> | undefined;

  /** `changed` is called when something was done or has passed. */
  constructor(changed: () => void) {
    this.#changed = changed;
  }

  did(about: string, back: Intent): void {
    const until = performance.now() + UNDO_MS;
    // All done to one thing stay as long as the last: who counts on may take back step by step.
    const same = this.#done.map((done) => (done.about === about ? { ...done, until } : done));
    this.#done = [{ about, back, until }, ...same];
    this.#wait();
  }

  /** Takes the last done to it off the list, to be taken back; null where there is none. */
  take(about: string): Intent | null {
    const last = this.#done.find((done) => done.about === about);
    this.#done = this.#done.filter((done) => done !== last);
    this.#changed();
    return last?.back ?? null;
  }

  has(about: string): boolean {
    return this.#done.some((done) => done.about === about);
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
