import type { Sync } from '../sync/index.ts';

/** So long after a tap it may be taken back where it was made, and a question stays open. */
const QUIET_MS = 8000;
/** Whoever sits at a desk reads, and thinks, with half a form filled in. */
const QUIET_AT_DESK_MS = 180_000;
const LOOK_EVERY_MS = 1000;

/** Everything by which somebody says that they are at the glass. */
const SIGNS = ['pointerdown', 'keydown', 'input', 'wheel'] as const;

/** Knows when nobody is at a screen, and nothing would be lost if it were loaded anew. */
export class BetweenTaps {
  readonly #sync: Sync;
  readonly #nowMs: () => number;
  #touchedMs = Number.NEGATIVE_INFINITY;

  constructor(sync: Sync, nowMs = () => performance.now()) {
    this.#sync = sync;
    this.#nowMs = nowMs;
    const touched = () => {
      this.#touchedMs = nowMs();
    };
    for (const sign of SIGNS) addEventListener(sign, touched, { capture: true, passive: true });
  }

  get isNow(): boolean {
    const { pending, view } = this.#sync.state;
    // What is on the disk is there again after it; what the page alone holds is not.
    const isSafe = pending.every(({ mark }) => mark === 'here');
    const quietMs = view?.face === 'desk' ? QUIET_AT_DESK_MS : QUIET_MS;
    return isSafe && this.#nowMs() - this.#touchedMs >= quietMs;
  }

  /** Resolves at the next such moment. */
  async wait(): Promise<void> {
    while (!this.isNow) await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY_MS));
  }
}
