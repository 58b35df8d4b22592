/**
 * The life of one process or one page. When it is over, nothing that it asked for happens any more:
 * what was to run does not, and what it waits for never comes. So a kill is a kill, and no
 * `finally` of the dead tidies up after it.
 */
export class Life {
  #isOver = false;
  readonly #mourners = new Set<() => void>();

  get isOver(): boolean {
    return this.#isOver;
  }

  end(): void {
    if (this.#isOver) return;
    this.#isOver = true;
    for (const told of this.#mourners) told();
    this.#mourners.clear();
  }

  onEnd(told: () => void): void {
    if (this.#isOver) told();
    else this.#mourners.add(told);
  }

  /** Runs for the living only. */
  guard<Args extends readonly unknown[]>(run: (...args: Args) => void): (...args: Args) => void {
    return (...args) => {
      if (!this.#isOver) run(...args);
    };
  }

  /** What `promise` brings, to the living only. */
  during<T>(promise: Promise<T>): Promise<T> {
    return new Promise((resolve, reject) => {
      promise.then(this.guard(resolve), this.guard(reject));
    });
  }
}
