import type { Instant } from '../../shared/kernel/index.ts';
import { instant } from '../../shared/kernel/index.ts';
import type { LocalClock } from './ports.ts';

/**
 * One beat there and back: sent at t0 and back at t3 by the monotonic clock here, at the hub from
 * t1 to t2.
 */
export type BeatTimes = {
  readonly t0: number;
  readonly t1: Instant;
  readonly t2: Instant;
  readonly t3: number;
  readonly speed: number;
};

type Sample = { readonly offsetMs: number; readonly tripMs: number; readonly atMs: number };

/** A sample this old says little: a quartz clock drifts by some 60 ms in that time at 200 ppm. */
const SAMPLE_LIFE_MS = 5 * 60_000;
const MOST_SAMPLES = 200;
const DRIFT = 200e-6;
/**
 * How fast what is shown nears what was measured; a clock that runs 5 % off for a moment is not
 * seen.
 */
const SLEW = 0.05;
const STEP_FROM_MS = 2000;

/**
 * The hub's clock as a screen knows it, from beats after RFC 5905 (offset = ((t1 − t0) + (t2 − t3))
 * / 2, trip = (t3 − t0) − (t2 − t1)); the true offset lies within half a trip of it, so the
 * shortest trip of the last minutes counts. It stands on the monotonic clock: a wrong device clock
 * moves nothing, and it goes on with the hub away.
 */
export class HubClock {
  readonly #local: LocalClock;
  #speed = 1;
  #samples: Sample[] = [];
  #targetMs: number;
  #shownMs: number;
  #slewedAtMs: number;
  #isGuess = true;

  constructor(local: LocalClock) {
    this.#local = local;
    const here = local.monotonicMs();
    this.#targetMs = local.wallMs() - here;
    this.#shownMs = this.#targetMs;
    this.#slewedAtMs = here;
  }

  /** The hub's time now; before the first beat the best guess there is. */
  now(): Instant {
    return this.at(this.#local.monotonicMs());
  }

  /** The hub's time at a reading of the monotonic clock. */
  at(monotonicMs: number): Instant {
    this.#slew();
    return instant(Math.round(monotonicMs * this.#speed + this.#shownMs));
  }

  /**
   * Until a beat has come back, a view's stamp is nearer to the truth than the device's own clock.
   */
  guess(hubAt: Instant): void {
    if (!this.#isGuess) return;
    this.#targetMs = hubAt - this.#local.monotonicMs() * this.#speed;
    this.#shownMs = this.#targetMs;
  }

  /**
   * A page that starts without a hub: what the hub's clock showed when it was last heard, and how
   * long ago that is by the device's own. However wrong that clock is, it only has to have run on.
   */
  recall(hubAt: Instant, { sinceMs, speed }: { sinceMs: number; speed: number }): void {
    if (!this.#isGuess) return;
    this.#speed = speed;
    this.guess(instant(hubAt + sinceMs * speed));
  }

  get speed(): number {
    return this.#speed;
  }

  /**
   * The monotonic clock may have stood still, as it does on some devices asleep: old samples mean
   * nothing.
   */
  forget(): void {
    this.#samples = [];
  }

  take({ t0, t1, t2, t3, speed }: BeatTimes): void {
    if (speed !== this.#speed) this.#changeSpeed(speed);
    const sample = {
      offsetMs: (t1 - t0 * speed + (t2 - t3 * speed)) / 2,
      tripMs: Math.max(0, (t3 - t0) * speed - (t2 - t1)),
      atMs: t3,
    };
    const best = this.#best();
    if (best && !canBothBe(best, sample, speed)) this.#samples = [];
    this.#samples = this.#samples.filter(({ atMs }) => t3 - atMs < SAMPLE_LIFE_MS);
    this.#samples = [...this.#samples.slice(1 - MOST_SAMPLES), sample];
    this.#aimAt(this.#best() ?? sample);
  }

  #best(): Sample | undefined {
    return this.#samples.reduce<Sample | undefined>(
      (best, sample) => (best && best.tripMs < sample.tripMs ? best : sample),
      undefined,
    );
  }

  #aimAt({ offsetMs }: Sample): void {
    this.#slew();
    this.#targetMs = offsetMs;
    const off = Math.abs(offsetMs - this.#shownMs);
    if (this.#isGuess || off > STEP_FROM_MS * this.#speed) this.#shownMs = offsetMs;
    this.#isGuess = false;
  }

  #slew(): void {
    const here = this.#local.monotonicMs();
    const most = Math.max(0, here - this.#slewedAtMs) * SLEW * this.#speed;
    const missing = this.#targetMs - this.#shownMs;
    this.#shownMs += Math.sign(missing) * Math.min(Math.abs(missing), most);
    this.#slewedAtMs = here;
  }

  #changeSpeed(speed: number): void {
    this.#speed = speed;
    this.#samples = [];
    this.#isGuess = true;
  }
}

/** Whether one offset explains both trips; if not, one of the clocks jumped between them. */
function canBothBe(a: Sample, b: Sample, speed: number): boolean {
  const drift = Math.abs(b.atMs - a.atMs) * DRIFT;
  // Clocks are read in whole milliseconds, at both ends.
  const slackMs = (drift + 2) * speed;
  return Math.abs(a.offsetMs - b.offsetMs) <= (a.tripMs + b.tripMs) / 2 + slackMs;
}
