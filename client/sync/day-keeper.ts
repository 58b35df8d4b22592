import { recallClock, steadyClock } from '../../shared/kernel/index.ts';
import type { ViewMessage } from '../../shared/protocol/index.ts';
import type { HubClock } from './hub-clock.ts';
import type { LastDay, LastView } from './last-view.ts';
import type { LocalClock, Timers } from './ports.ts';

/** Views come with every tap of anybody; one is written when it has stood so long. */
const KEPT_AFTER_MS = 2000;
/** "Alone since" is said in minutes: being a third of one off is not seen. */
const HEARD_EVERY_MS = 20_000;

type Ports = {
  readonly lastView: LastView;
  readonly clock: LocalClock;
  readonly timers: Timers;
  readonly hubClock: HubClock;
};

/**
 * Keeps the day that the hub shows on this device, so that a screen which starts without a hub has
 * one to show. A store that fails costs nothing but that.
 */
export class DayKeeper {
  readonly #ports: Ports;
  #waiting: ViewMessage | null = null;
  #heardAtMs = Number.NEGATIVE_INFINITY;
  /** Of the day that is kept. */
  #zone: string | null = null;
  #stop: () => void = () => {};

  constructor(ports: Ports) {
    this.#ports = ports;
  }

  /** The day that was kept, with the clock set going again from when it was heard. */
  async recall(): Promise<LastDay | null> {
    const { lastView, clock, hubClock } = this.#ports;
    const day = await lastView.read().catch(() => null);
    if (!day) return null;
    const { hubAt, wallMs, speed, clock: kitchen } = day.heard;
    if (kitchen) recallClock(kitchen);
    // A device clock that was set back meanwhile says nothing; time does not run backwards.
    const sinceMs = Math.max(0, clock.wallMs() - wallMs);
    hubClock.recall(hubAt, { sinceMs, speed });
    return day;
  }

  shown(message: ViewMessage): void {
    const isWaiting = this.#waiting !== null;
    this.#waiting = message;
    if (isWaiting) return;
    this.#stop = this.#ports.timers.after(KEPT_AFTER_MS, () => this.#keep());
  }

  /** The hub was heard, whatever it said. */
  heard(): void {
    const { lastView, clock } = this.#ports;
    const nowMs = clock.monotonicMs();
    if (this.#zone === null || nowMs - this.#heardAtMs < HEARD_EVERY_MS) return;
    this.#heardAtMs = nowMs;
    void lastView.keepHeard(this.#now()).catch(() => {});
  }

  forget(): void {
    this.#stop();
    this.#waiting = null;
    this.#zone = null;
    void this.#ports.lastView.forget().catch(() => {});
  }

  close(): void {
    this.#stop();
  }

  #keep(): void {
    const message = this.#waiting;
    this.#waiting = null;
    if (!message) return;
    this.#zone = message.view.zone;
    this.#heardAtMs = this.#ports.clock.monotonicMs();
    void this.#ports.lastView.keepDay({ message, heard: this.#now() }).catch(() => {});
  }

  #now() {
    const { clock, hubClock } = this.#ports;
    const hubAt = hubClock.now();
    const kitchen = this.#zone === null ? null : steadyClock(this.#zone, hubAt);
    return { hubAt, wallMs: clock.wallMs(), speed: hubClock.speed, clock: kitchen };
  }
}
