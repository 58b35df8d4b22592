/** What number each screen has, and when all of them have the one that is waited for. */
export class Arrivals {
  readonly #has: number[];
  #wanted = Number.POSITIVE_INFINITY;
  #missing = 0;
  #done: (() => void) | null = null;

  constructor(screens: number) {
    this.#has = Array(screens).fill(-1);
  }

  arrived(screen: number, n: number): void {
    const before = this.#has[screen] ?? -1;
    this.#has[screen] = Math.max(before, n);
    if (before < this.#wanted && n >= this.#wanted) {
      this.#missing -= 1;
      if (this.#missing === 0) this.#done?.();
    }
  }

  /** Resolves once every screen has number `n` or a later one. */
  all(n: number): Promise<void> {
    this.#wanted = n;
    this.#missing = this.#has.filter((has) => has < n).length;
    return new Promise((resolve) => {
      this.#done = resolve;
      if (this.#missing === 0) resolve();
    });
  }
}
