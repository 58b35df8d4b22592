import type { Agenda } from './agenda.ts';
import type { Device } from './device.ts';
import type { MachineClock } from './machine-clock.ts';
import type { Verdict } from './verdict.ts';

const RIGHT_TO_MS = 500;
/** A measurement is right to half its trip. */
const GOOD_TRIP_MS = 400;
/**
 * What is shown nears what was measured by 50 ms in a second, unless it is off by more than two.
 */
const NEARING_MS = 40_000;
/** Measurements are forgotten after five minutes. */
const MEASURED_LATELY_MS = 290_000;

type Measured = { readonly sinceMs: number; readonly lastMs: number };

/** Holds the countdowns of every screen that hears the hub to the hub's own clock. */
export class ClockWitness {
  readonly #agenda: Agenda;
  readonly #hub: MachineClock;
  readonly #verdict: Verdict;
  readonly #measured = new Map<Device, Measured>();
  #furthestMs = 0;

  constructor(agenda: Agenda, hub: MachineClock, verdict: Verdict) {
    this.#agenda = agenda;
    this.#hub = hub;
    this.#verdict = verdict;
  }

  beaten(device: Device, tripMs: number): void {
    if (tripMs > GOOD_TRIP_MS || this.#standsStill()) return;
    const lastMs = this.#agenda.nowMs;
    const sinceMs = this.#measured.get(device)?.sinceMs ?? lastMs;
    this.#measured.set(device, { sinceMs, lastMs });
  }

  /** It slept or was loaded anew, so that it knows the hub's clock no more. */
  lost(device: Device): void {
    this.#measured.delete(device);
  }

  /** The hub's clock was set: every screen has to find it anew. */
  hubClockSet(): void {
    this.#measured.clear();
  }

  look(): void {
    if (this.#standsStill()) return;
    const nowMs = this.#agenda.nowMs;
    for (const [device, { sinceMs, lastMs }] of this.#measured) {
      const isSynced = nowMs - sinceMs >= NEARING_MS && nowMs - lastMs <= MEASURED_LATELY_MS;
      if (!isSynced || !device.sync) continue;
      const offMs = device.sync.hubNow() - this.#hub.nowMs();
      this.#verdict.holds('clock', Math.abs(offMs) <= RIGHT_TO_MS, () => {
        return `${device.screenId} is off by ${offMs.toFixed(0)} ms`;
      });
    }
  }

  /** A hub whose machine was set back says the same time until that has come again. */
  #standsStill(): boolean {
    const nowMs = this.#hub.nowMs();
    this.#furthestMs = Math.max(this.#furthestMs, nowMs);
    return nowMs < this.#furthestMs;
  }
}
