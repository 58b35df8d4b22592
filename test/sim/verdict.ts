/** What a run must never break, each in the words it is reported in. */
export const PROMISES = {
  once: 'a command that was answered yes is in the log exactly once, for ever',
  grows: 'the log only grows, number by number, and its chain holds',
  same: 'the same command gets the same answer',
  kept: 'a tap that the device kept is answered, and a refusal is shown',
  confirmed: 'what a screen shows as confirmed is the day folded to that entry',
  forward: 'a screen never goes back to an older view',
  converges: 'once the trouble is over, all screens come to agree with the hub in bounded time',
  clock: 'the countdowns of a screen that hears the hub are right to half a second',
  day: 'no lag is broken unreported, no slot is over-filled, no load is in two places',
  barred: 'what a limit bars is neither begun nor sold before somebody said what was done about it',
  asked: 'no check is answered twice: neither asked for again once it was kept, nor put right anew',
  hale: 'the hub finds no fault with itself',
} as const;
export type PromiseName = keyof typeof PROMISES;

export type Broken = {
  readonly promise: PromiseName;
  readonly found: string;
  /** The command that it is about, where it is about one. */
  readonly about: string | null;
};

/**
 * The first promise that a run broke. It is noted and not thrown, since what is watched would catch
 * it.
 */
export class Verdict {
  #broken: Broken | null = null;

  get broken(): Broken | null {
    return this.#broken;
  }

  breaks(promise: PromiseName, found: string, about: string | null = null): void {
    this.#broken ??= { promise, found, about };
  }

  /** Breaks the promise unless `condition` holds. */
  holds(
    promise: PromiseName,
    condition: boolean,
    found: () => string,
    about: string | null = null,
  ): void {
    if (!condition) this.breaks(promise, found(), about);
  }
}
