import { type DayState, type ServiceSpread, spreading } from '../../shared/day/index.ts';
import type { Clock, Stop } from '../clock.ts';
import { areSpreadsLookedFor, liveOf, tellSpreads } from '../day-rules.ts';
import type { Hub } from '../hub/index.ts';
import type { Report } from '../report.ts';

/** Taps that come one after the other are looked at once, and so is a desk that comes to look. */
const LOOK_MS = 2_000;

/** What hangs on the clock alone, as a cook that should have ended, is looked at so often. */
const ANEW_MS = 60_000;

type Parts = {
  readonly hub: Pick<Hub<DayState>, 'running' | 'state'>;
  readonly clock: Clock;
  readonly report: Report;
};

/**
 * Keeps the spread of each service at hand while a desk looks at it. It is worked out beside the
 * taps, a case in a turn of its own, so that a tap waits for one of them at most; what the desk is
 * shown may be a few seconds old.
 */
export class Spreads {
  readonly #parts: Parts;
  #running: Promise<void> | null = null;
  #isStale = true;
  /** The first is worked out for whoever comes, so that a desk has it from its beginning. */
  #isFirst = true;
  #looks = 0;
  #isClosed = false;
  readonly #stopLooking: Stop;

  constructor(parts: Parts) {
    this.#parts = parts;
    // However fast the clock runs, the machine is asked no oftener.
    const everyMs = LOOK_MS * (parts.clock.speed ?? 1);
    this.#stopLooking = parts.clock.every(everyMs, () => this.#look());
  }

  /** Something was kept. */
  heed(): void {
    this.#isStale = true;
  }

  /** Resolves when nothing is under way. */
  async idle(): Promise<void> {
    await this.#running;
  }

  async close(): Promise<void> {
    this.#isClosed = true;
    this.#stopLooking();
    await this.#running;
  }

  #look(): void {
    this.#looks += 1;
    if (this.#looks * LOOK_MS >= ANEW_MS) this.#isStale = true;
    if (!this.#isStale || this.#running || this.#isClosed) return;
    if (!this.#isFirst && !areSpreadsLookedFor(this.#parts.hub.running)) return;
    this.#isFirst = false;
    this.#isStale = false;
    this.#looks = 0;
    this.#running = this.#work();
  }

  async #work(): Promise<void> {
    const { hub, report } = this.#parts;
    try {
      const spreads = await this.#workedOut();
      if (spreads) tellSpreads(hub.running, spreads);
    } catch (fault) {
      report({ level: 'fault', what: 'the spread of the services could not be worked out', fault });
    }
    this.#running = null;
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
