import { type DayState, type ServiceSpread, spreading } from '../../shared/day/index.ts';
import type { Clock, Stop } from '../clock.ts';
import { liveOf, tellSpreads } from '../day-rules.ts';
import type { Hub } from '../hub/index.ts';
import type { Report } from '../report.ts';

/** Taps that come one after the other are looked at once. */
const DEBOUNCE_MS = 2_000;

/** What hangs on the clock alone, as a cook that should have ended, is looked at so often. */
const LOOK_MS = 60_000;

type Parts = {
  readonly hub: Pick<Hub<DayState>, 'running' | 'state'>;
  readonly clock: Clock;
  readonly report: Report;
};

/**
 * Keeps the spread of each service at hand for the desk. It is worked out beside the taps, a case
 * in a turn of its own, so that a tap waits for one of them at most; what the desk is shown may be
 * a few seconds old.
 */
export class Spreads {
  readonly #parts: Parts;
  #timer: Stop | null = null;
  #running: Promise<void> | null = null;
  #isAsked = false;
  #isClosed = false;
  readonly #stopLooking: Stop;

  constructor(parts: Parts) {
    this.#parts = parts;
    this.#stopLooking = parts.clock.every(this.#ofMachine(LOOK_MS), () => this.heed());
  }

  /** Something was kept, or time went by. */
  heed(): void {
    this.#isAsked = true;
    if (this.#isClosed || this.#timer || this.#running) return;
    this.#timer = this.#parts.clock.after(this.#ofMachine(DEBOUNCE_MS), () => {
      this.#timer = null;
      this.#running = this.#work();
    });
  }

  /** Resolves when nothing is under way. */
  async idle(): Promise<void> {
    await this.#running;
  }

  async close(): Promise<void> {
    this.#isClosed = true;
    this.#stopLooking();
    this.#timer?.();
    await this.#running;
  }

  /** However fast the clock runs, the machine is asked no oftener. */
  #ofMachine(ms: number): number {
    return ms * (this.#parts.clock.speed ?? 1);
  }

  async #work(): Promise<void> {
    this.#isAsked = false;
    const { hub, report } = this.#parts;
    try {
      const spreads = await this.#workedOut();
      if (spreads) tellSpreads(hub.running, spreads);
    } catch (fault) {
      report({ level: 'fault', what: 'the spread of the services could not be worked out', fault });
    }
    this.#running = null;
    if (this.#isAsked) this.heed();
  }

  async #workedOut(): Promise<readonly ServiceSpread[] | null> {
    const { hub, clock } = this.#parts;
    const live = hub.state.plan ? liveOf(hub.running) : null;
    if (!live) return null;
    const work = spreading(live);
    for (;;) {
      const { done, value } = work.next();
      if (done) return value;
      await new Promise<void>((resolve) => void clock.after(0, resolve));
      if (this.#isClosed) return null;
    }
  }
}
