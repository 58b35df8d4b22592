import type { Blank, ViewMessage } from '../../shared/protocol/index.ts';

/** What the hub last had this screen show: a view, or why there is none. */
export type Shown = ViewMessage | Blank;

/**
 * Holds the newest of what the hub sent. Messages may come late, twice and in another order, also
 * across the hub's own restarts; an epoch once left does not come back.
 */
export class Newest {
  #shown: Shown | null = null;
  #left = new Set<string>();
  #isFirst = true;

  get shown(): Shown | null {
    return this.#shown;
  }

  /**
   * A new connection: whatever the hub says first on it may begin an epoch, even one whose log is
   * shorter.
   */
  connected(): void {
    this.#isFirst = true;
    this.#left.clear();
  }

  /** What was shown before the page was loaded: anything that the hub says now is newer. */
  recall(message: ViewMessage): boolean {
    if (this.#shown) return false;
    this.#shown = message;
    return true;
  }

  /** Whether `message` was news. */
  take(message: Shown): boolean {
    const held = this.#shown;
    if (held && !this.#isNewer(held, message)) return false;
    if (held && held.epoch !== message.epoch) this.#left.add(held.epoch);
    this.#isFirst = false;
    this.#shown = message;
    return true;
  }

  #isNewer(held: Shown, message: Shown): boolean {
    if (message.epoch === held.epoch) return message.seq >= held.seq;
    if (this.#left.has(message.epoch)) return false;
    return this.#isFirst || message.seq >= held.seq;
  }
}
