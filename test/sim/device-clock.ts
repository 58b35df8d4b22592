import type { LocalClock } from '../../client/sync/index.ts';
import type { Agenda } from './agenda.ts';

/** The moment at which every run begins, in UTC milliseconds: the crew is a little late already. */
export const BEGINNING_MS = Date.UTC(2026, 10, 25, 15, 45);

export type DeviceClockParts = {
  readonly agenda: Agenda;
  /** How much too fast it runs, in millionths. */
  readonly driftPpm: number;
  /** How far off its time of day is at first. */
  readonly wallErrorMs: number;
  /** Whether its monotonic clock stands still while it sleeps, as on some devices it does. */
  readonly standsStillAsleep: boolean;
};

/** The two clocks of a device, neither of them right. */
export class DeviceClock implements LocalClock {
  readonly #agenda: Agenda;
  readonly #rate: number;
  readonly #standsStillAsleep: boolean;
  #wallErrorMs: number;
  #stoodStillMs = 0;
  #asleepSinceMs: number | null = null;

  constructor({ agenda, driftPpm, wallErrorMs, standsStillAsleep }: DeviceClockParts) {
    this.#agenda = agenda;
    this.#rate = 1 + driftPpm * 1e-6;
    this.#wallErrorMs = wallErrorMs;
    this.#standsStillAsleep = standsStillAsleep;
  }

  monotonicMs(): number {
    return this.#agenda.nowMs * this.#rate - this.#stoodStillMs;
  }

  wallMs(): number {
    return BEGINNING_MS + this.#agenda.nowMs * this.#rate + this.#wallErrorMs;
  }

  /** How long the world takes for what is so long by this clock. */
  worldMs(ownMs: number): number {
    return ownMs / this.#rate;
  }

  /** Somebody sets its time of day. */
  setBy(ms: number): void {
    this.#wallErrorMs += ms;
  }

  fallAsleep(): void {
    this.#asleepSinceMs = this.#agenda.nowMs;
  }

  wake(): void {
    if (this.#asleepSinceMs === null) return;
    const sleptMs = (this.#agenda.nowMs - this.#asleepSinceMs) * this.#rate;
    if (this.#standsStillAsleep) this.#stoodStillMs += sleptMs;
    this.#asleepSinceMs = null;
  }
}
