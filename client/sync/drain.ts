import type { Answer } from '../../shared/protocol/index.ts';
import { LinkLost } from '../../shared/protocol/index.ts';
import type { Command } from '../../shared/view/index.ts';
import type { Timers } from './ports.ts';
import type { Taps } from './taps.ts';

/** Asked again after so long without a word: the same command always gets the same answer. */
const ASK_AGAIN_MS = 5000;
const REST_MS = 1000;

export type DrainPorts = {
  readonly taps: Taps;
  readonly timers: Timers;
  /** Whether the link is up and the sending is this tab's. */
  readonly isOpen: () => boolean;
  /** Rejects with LinkLost where no answer came. */
  readonly send: (command: Command) => Promise<Answer>;
  readonly settled: (command: Command, answer: Answer) => void;
};

/**
 * Empties the outbox: strictly in order, one at a time, each kept on the disk before it is sent.
 */
export class Drain {
  readonly #ports: DrainPorts;
  #isRunning = false;

  constructor(ports: DrainPorts) {
    this.#ports = ports;
  }

  /** Starts if it is not running already. */
  async run(): Promise<void> {
    if (this.#isRunning) return;
    this.#isRunning = true;
    try {
      await this.#empty();
    } finally {
      this.#isRunning = false;
    }
  }

  async #empty(): Promise<void> {
    const { taps, isOpen, settled } = this.#ports;
    for (let next = taps.next(); next && isOpen(); next = taps.next()) {
      await next.written;
      // What the outbox held from before the page was loaded comes first.
      if (next !== taps.next()) continue;
      const answer = isOpen() ? await this.#ask(next.command) : null;
      if (answer) {
        await taps.settle(next.command.id, answer);
        settled(next.command, answer);
      } else if (isOpen()) {
        await this.#rest();
      }
    }
  }

  #ask(command: Command): Promise<Answer | null> {
    const { send, timers } = this.#ports;
    return new Promise((resolve, reject) => {
      const callOff = timers.after(ASK_AGAIN_MS, () => resolve(null));
      send(command).then(
        (answer) => {
          callOff();
          resolve(answer);
        },
        (fault: unknown) => {
          callOff();
          if (fault instanceof LinkLost) resolve(null);
          else reject(fault);
        },
      );
    });
  }

  #rest(): Promise<void> {
    return new Promise((resolve) => {
      this.#ports.timers.after(REST_MS, resolve);
    });
  }
}
