import type { KeptTap, LocalClock, Outbox, Sync, Timers } from '../../../client/sync/index.ts';
import { createSync, memoryOutbox, soleDrainer } from '../../../client/sync/index.ts';
import type { CommandId, Instant, ScreenId, StationId } from '../../../shared/kernel/index.ts';
import { instant } from '../../../shared/kernel/index.ts';
import type {
  Answer,
  Beat,
  BeatAnswer,
  CommandMessage,
  HubLinkListener,
  OpenLink,
  QuestionAnswer,
} from '../../../shared/protocol/index.ts';
import { LinkLost } from '../../../shared/protocol/index.ts';

/** Time that a test moves: what was put off runs when its moment comes, and promises in between. */
export class StagedTime implements Timers, LocalClock {
  #nowMs = 0;
  #waiting: { readonly atMs: number; readonly run: () => void }[] = [];
  /** How far the device's wall clock is off. */
  wallErrorMs = 0;

  monotonicMs(): number {
    return this.#nowMs;
  }

  wallMs(): number {
    return HUB_START + this.#nowMs + this.wallErrorMs;
  }

  after(delayMs: number, run: () => void): () => void {
    const entry = { atMs: this.#nowMs + delayMs, run };
    this.#waiting.push(entry);
    return () => {
      this.#waiting = this.#waiting.filter((other) => other !== entry);
    };
  }

  async pass(durationMs: number): Promise<void> {
    const until = this.#nowMs + durationMs;
    await settled();
    for (;;) {
      const next = [...this.#waiting].sort((a, b) => a.atMs - b.atMs)[0];
      if (!next || next.atMs > until) break;
      this.#waiting = this.#waiting.filter((other) => other !== next);
      this.#nowMs = Math.max(this.#nowMs, next.atMs);
      next.run();
      await settled();
    }
    this.#nowMs = until;
    await settled();
  }
}

/** Lets everything run that only waits for promises. */
export async function settled(): Promise<void> {
  for (let turns = 0; turns < 50; turns++) await Promise.resolve();
}

export const HUB_START = 1_795_600_000_000;

/** A hub that says what a test has it say, and writes down what it hears. */
export class StagedHub {
  readonly received: CommandMessage[] = [];
  wholes = 0;
  /** Null: no answer comes, and the line stays up. */
  answer: ((message: CommandMessage) => Answer | null) | null = () => ({ ok: true, seq: 1 });
  beatAnswer: ((beat: Beat) => BeatAnswer | null) | null = null;
  listener: HubLinkListener | null = null;
  #isUp = false;
  readonly #time: StagedTime;

  constructor(time: StagedTime) {
    this.#time = time;
  }

  get now(): Instant {
    return instant(HUB_START + this.#time.monotonicMs());
  }

  readonly open: OpenLink = (_hello, listener) => {
    this.listener = listener;
    return {
      command: (message) => {
        if (this.#isUp) this.received.push(message);
        return this.#reply(() => this.answer?.(message) ?? null);
      },
      question: () => this.#reply<QuestionAnswer>(() => null),
      beat: (beat) => this.#reply(() => this.#beat(beat)),
      whole: () => {
        this.wholes += 1;
      },
      close: () => {
        this.#isUp = false;
      },
    };
  };

  up(): void {
    this.#isUp = true;
    this.listener?.up();
  }

  down(): void {
    this.#isUp = false;
    this.listener?.down();
  }

  #beat(beat: Beat): BeatAnswer | null {
    if (this.beatAnswer) return this.beatAnswer(beat);
    return { t1: this.now, t2: this.now };
  }

  #reply<T>(make: () => T | null): Promise<T> {
    if (!this.#isUp) return Promise.reject(new LinkLost());
    const made = make();
    return made === null ? new Promise(() => {}) : Promise.resolve(made);
  }
}

/** A screen at a station, and the hub, the time and the disk that it stands on. */
export class Staged {
  readonly time = new StagedTime();
  readonly hub = new StagedHub(this.time);
  readonly disk = new Map<CommandId, KeptTap>();
  #ids = 0;

  /** `outbox`: what it does with its taps; left out: it keeps them on the disk. */
  screen(outbox: Outbox = memoryOutbox(this.disk)): Sync {
    return createSync({
      openLink: this.hub.open,
      outbox,
      clock: this.time,
      timers: this.time,
      drainer: soleDrainer(),
      newId: () => `tap-${++this.#ids}`,
      screenId: 'wall' as ScreenId,
      face: { kind: 'station', station: 'trim' as StationId },
    });
  }
}
