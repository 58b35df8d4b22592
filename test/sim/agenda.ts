/** Calls off what was asked for; too late, or twice, it does nothing. */
export type CallOff = () => void;

type Entry = { readonly dueMs: number; readonly order: number; run: (() => void) | null };

/**
 * Virtual time and the one queue of all that is to happen in it: by its moment and, within one
 * moment, in the order it was asked for. Time passes only from one entry to the next.
 */
export class Agenda {
  #nowMs = 0;
  #asked = 0;
  readonly #heap: Entry[] = [];

  /** Milliseconds since the beginning. */
  get nowMs(): number {
    return this.#nowMs;
  }

  after(delayMs: number, run: () => void): CallOff {
    const entry: Entry = { dueMs: this.#nowMs + Math.max(0, delayMs), order: this.#asked++, run };
    this.#rise(entry);
    return () => {
      entry.run = null;
    };
  }

  /**
   * Runs the next entry and everything that follows from it in promises alone; false when there is
   * none left before `untilMs`, which it then is.
   */
  async step(untilMs = Number.POSITIVE_INFINITY): Promise<boolean> {
    for (let next = this.#heap[0]; next && next.dueMs <= untilMs; next = this.#heap[0]) {
      this.#takeFirst();
      if (!next.run) continue;
      this.#nowMs = next.dueMs;
      next.run();
      await settled();
      return true;
    }
    if (Number.isFinite(untilMs)) this.#nowMs = Math.max(this.#nowMs, untilMs);
    return false;
  }

  async passTo(untilMs: number): Promise<void> {
    let isMore = true;
    while (isMore) isMore = await this.step(untilMs);
  }

  #rise(entry: Entry): void {
    const heap = this.#heap;
    let at = heap.length;
    while (at > 0) {
      const above = (at - 1) >> 1;
      const parent = heap[above] as Entry;
      if (isBefore(parent, entry)) break;
      heap[at] = parent;
      at = above;
    }
    heap[at] = entry;
  }

  #takeFirst(): void {
    const heap = this.#heap;
    const last = heap.pop() as Entry;
    if (heap.length === 0) return;
    let at = 0;
    for (;;) {
      let child = 2 * at + 1;
      if (child >= heap.length) break;
      const right = heap[child + 1];
      if (right && isBefore(right, heap[child] as Entry)) child += 1;
      const lesser = heap[child] as Entry;
      if (isBefore(last, lesser)) break;
      heap[at] = lesser;
      at = child;
    }
    heap[at] = last;
  }
}

const isBefore = (a: Entry, b: Entry) =>
  a.dueMs < b.dueMs || (a.dueMs === b.dueMs && a.order < b.order);

/**
 * Resolves once no promise has anything left to do; the code under test waits for nothing but
 * promises.
 */
export const settled = () => new Promise<void>((resolve) => setImmediate(resolve));
