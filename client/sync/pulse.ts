import type { BeatAnswer } from '../../shared/protocol/index.ts';
import type { HubClock } from './hub-clock.ts';
import type { LocalClock, Timers } from './ports.ts';

export const BEAT_EVERY_MS = 2000;
/** So long without a word and the screen says that it is alone. */
export const SILENCE_MS = 5000;
/** The clock is measured so often at once when the link comes up. */
const FIRST_BEATS = 8;

export type PulsePorts = {
  readonly clock: LocalClock;
  readonly timers: Timers;
  readonly hubClock: HubClock;
  /** Rejects where no answer came. */
  readonly beat: (t0: number) => Promise<BeatAnswer>;
  readonly answered: (answer: BeatAnswer) => void;
  readonly silent: () => void;
};

/** Keeps time with the hub, and notices when it falls silent. */
export class Pulse {
  readonly #ports: PulsePorts;
  #stopBeats: () => void = () => {};
  #stopWatch: () => void = () => {};
  #heardAtMs: number;
  #connection = 0;

  constructor(ports: PulsePorts) {
    this.#ports = ports;
    this.#heardAtMs = ports.clock.monotonicMs();
    this.#watch();
  }

  /** When the hub was last heard, by the monotonic clock. */
  get heardAtMs(): number {
    return this.#heardAtMs;
  }

  heard(): void {
    this.#heardAtMs = this.#ports.clock.monotonicMs();
    this.#watch();
  }

  up(): void {
    this.#connection += 1;
    this.heard();
    this.beatNow();
  }

  down(): void {
    this.#connection += 1;
    this.#stopBeats();
  }

  /** Measures the clock anew from several beats, then goes on with one every two seconds. */
  beatNow(): void {
    this.#stopBeats();
    void this.#burst(this.#connection);
    this.#beatLater(this.#connection);
  }

  close(): void {
    this.down();
    this.#stopWatch();
  }

  async #burst(connection: number): Promise<void> {
    // A link may come up while it is still being opened.
    await Promise.resolve();
    for (let beats = 0; beats < FIRST_BEATS; beats++) {
      if (!(await this.#beat(connection))) return;
    }
  }

  #beatLater(connection: number): void {
    this.#stopBeats = this.#ports.timers.after(BEAT_EVERY_MS, () => {
      void this.#beat(connection);
      this.#beatLater(connection);
    });
  }

  async #beat(connection: number): Promise<boolean> {
    const { clock, hubClock, beat, answered } = this.#ports;
    const t0 = clock.monotonicMs();
    try {
      const answer = await beat(t0);
      if (connection !== this.#connection) return false;
      const { t1, t2, speed = 1 } = answer;
      hubClock.take({ t0, t1, t2, t3: clock.monotonicMs(), speed });
      this.heard();
      answered(answer);
      return true;
    } catch {
      // No answer is what the silence is measured by.
      return false;
    }
  }

  #watch(): void {
    this.#stopWatch();
    this.#stopWatch = this.#ports.timers.after(SILENCE_MS, this.#ports.silent);
  }
}
