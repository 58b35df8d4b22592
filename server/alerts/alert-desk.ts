import type { DayState } from '../../shared/day/index.ts';
import type { ScreenId } from '../../shared/kernel/index.ts';
import type { AlertsAsk, AlertsShown } from '../../shared/protocol/index.ts';
import {
  type Alert,
  type AlertBook,
  alertsIn,
  emptyBook,
  heed,
  noticesOf,
  ratesOf,
} from '../../shared/view/index.ts';
import type { Clock, Stop } from '../clock.ts';
import { liveOf } from '../day-rules.ts';
import type { Hub } from '../hub/index.ts';
import type { Report } from '../report.ts';

/** How often it is looked what needs a hand. */
const LOOK_MS = 5_000;
/** A screen that sounds and has not asked for so long, in the world's time, is off. */
const LEASE_MS = 15_000;

type Parts = {
  readonly hub: Pick<Hub<DayState>, 'running' | 'state'>;
  readonly clock: Pick<Clock, 'speed' | 'now' | 'after' | 'every'>;
  readonly report: Report;
};

/**
 * Who is called to what, how often, and which one screen sounds. It is kept beside the day and not
 * in its log: a call changes nothing, and a hub that begins anew calls anew for what still stands.
 */
export class AlertDesk {
  readonly #parts: Parts;
  readonly #stop: Stop;
  #book: AlertBook;
  #alerts: readonly Alert[] = [];
  #sounding: ScreenId | null = null;
  #release: Stop = () => {};

  constructor(parts: Parts) {
    this.#parts = parts;
    this.#book = emptyBook(parts.clock.now());
    this.#stop = parts.clock.every(LOOK_MS, () => this.look());
  }

  close(): void {
    this.#stop();
    this.#release();
  }

  look(): void {
    const { hub, clock, report } = this.#parts;
    try {
      const live = hub.state.plan ? liveOf(hub.running) : null;
      this.#alerts = live && !hub.state.happened.closed ? alertsIn(live) : [];
      this.#book = heed(this.#book, this.#alerts, clock.now());
    } catch (fault) {
      report({ level: 'fault', what: 'it could not be worked out who is wanted', fault });
    }
  }

  show({ screen, sounds }: AlertsAsk): AlertsShown {
    const now = this.#parts.clock.now();
    return {
      ok: true,
      notices: noticesOf(this.#alerts),
      rates: ratesOf(this.#book, now),
      calledAt: this.#book.rings.at(-1)?.at ?? null,
      isHeard: sounds && this.#maySound(screen),
    };
  }

  /** The first that asks, as long as it goes on asking. Screens keep the world's time. */
  #maySound(screen: ScreenId): boolean {
    if (this.#sounding !== null && this.#sounding !== screen) return false;
    const { clock } = this.#parts;
    this.#sounding = screen;
    this.#release();
    this.#release = clock.after(LEASE_MS * (clock.speed ?? 1), () => {
      this.#sounding = null;
    });
    return true;
  }
}
