import { type DayState, type Event, type Live, openLive } from '../../shared/day/index.ts';
import { type Instant, must } from '../../shared/kernel/index.ts';
import type { LogWitness } from './log-witness.ts';

/** The day just after an event, and its state just before. */
type OnEvent = (live: Live, event: Event, before: DayState) => void;

/**
 * The day, gone through once more from the log alone: it knows of no moments but those of its
 * events and its readers.
 */
export class Replay {
  readonly #log: LogWitness;
  readonly #onEvent: OnEvent;
  #live: Live | null = null;

  constructor(log: LogWitness, onEvent: OnEvent) {
    this.#log = log;
    this.#onEvent = onEvent;
  }

  /** The live day after entry `seq`, as of `at`. */
  at(seq: number, at: Instant): Live {
    const live = this.#live;
    if (!live?.state.plan || live.state.seq > seq || live.now > at) return this.#openAt(seq, at);
    for (const event of this.#log.eventsAfter(live.state.seq, seq)) {
      const before = live.state;
      live.apply(event);
      this.#onEvent(live, event, before);
    }
    live.tick(at);
    return live;
  }

  /** A power cut took the end of the log: what was read of it did not happen. */
  forget(): void {
    if (this.#live && this.#live.state.seq > this.#log.seq) this.#live = null;
  }

  /**
   * Somebody looks back: at a day that the hub has gone beyond, or by a clock that was set back.
   */
  #openAt(seq: number, at: Instant): Live {
    const live = openLive(must(this.#log.dayAt(seq), `entry ${seq}`), at);
    this.#live ??= live;
    return live;
  }
}
