import { randomUUID } from 'node:crypto';
import { type Forecast, type ForecastAsk, MODEL_VERSION } from '../../shared/cook/index.ts';
import {
  adoptedFrom,
  type CookAsk,
  cookAsks,
  type DayState,
  decideForecast,
} from '../../shared/day/index.ts';
import type { CommandId, TaskId } from '../../shared/kernel/index.ts';
import type { Clock, Stop } from '../clock.ts';
import type { Hub } from '../hub/index.ts';
import type { Report } from '../report.ts';
import type { CookThread } from './cook-thread.ts';

/** A walk round the racks with a thermometer is one piece of news, not ten. */
const DEBOUNCE_MS = 2_000;

type Parts = {
  readonly hub: Pick<Hub<DayState>, 'state' | 'health' | 'put'>;
  readonly thread: CookThread;
  readonly clock: Clock;
  readonly report: Report;
};

/** What was last foreseen of a load, and from what. */
type Known = { readonly key: string; readonly says: Forecast['saysOfSmokers'] };

/**
 * Keeps what is foreseen of every load in the fire true to what is known of it. One queue: a load
 * whose readings, fire, place or wrap are new is foreseen anew, and then those that share its
 * smoker, with what it now says of that. What is no longer true when it is done is dropped.
 */
export class Forecasts {
  readonly #parts: Parts;
  readonly #known = new Map<TaskId, Known>();
  readonly #waiting = new Set<TaskId>();
  #running: Promise<void> | null = null;
  #timer: Stop | null = null;
  #isClosed = false;

  constructor(parts: Parts) {
    this.#parts = parts;
  }

  /** Something was kept, or the hub has just begun: looks soon whether it is news of a cook. */
  heed(): void {
    if (this.#isClosed || this.#timer) return;
    this.#timer = this.#parts.clock.after(DEBOUNCE_MS, () => this.#look());
  }

  /** Resolves when nothing waits and nothing is under way. */
  async idle(): Promise<void> {
    while (this.#running) await this.#running;
  }

  async close(): Promise<void> {
    this.#isClosed = true;
    this.#timer?.();
    await this.#parts.thread.close();
    await this.#running;
  }

  #look(): void {
    this.#timer = null;
    if (this.#parts.hub.health.readOnly) return;
    const asks = this.#asks();
    const cooking = new Set(asks.map(({ stay }) => stay));
    for (const stay of this.#known.keys()) if (!cooking.has(stay)) this.#known.delete(stay);
    for (const { stay, key } of asks) {
      if (this.#known.get(stay)?.key !== key) this.#waiting.add(stay);
    }
    if (this.#waiting.size > 0) this.#running ??= this.#work();
  }

  #asks(): CookAsk[] {
    return cookAsks(this.#parts.hub.state, this.#parts.clock.now());
  }

  async #work(): Promise<void> {
    // What comes in meanwhile is gone through as well.
    for (const stay of this.#waiting) {
      this.#waiting.delete(stay);
      try {
        await this.#foresee(stay);
      } catch (fault) {
        if (this.#isClosed) break;
        this.#parts.report({ level: 'fault', what: 'a cook could not be foreseen', stay, fault });
      }
    }
    this.#running = null;
  }

  async #foresee(stay: TaskId): Promise<void> {
    const ask = this.#asks().find((each) => each.stay === stay);
    if (!ask) return;
    const isOwn = this.#known.get(stay)?.key !== ask.key;
    const keep = { name: stay, key: ask.key };
    const found = await this.#parts.thread.foresee(this.withHeard(ask), keep);
    if (!found.ok) {
      const rules = found.faults.map(({ rule }) => rule);
      this.#parts.report({ level: 'note', what: 'nothing can be foreseen of it', stay, rules });
    }
    const made = found.ok ? found.forecast : null;
    this.#known.set(stay, { key: ask.key, says: made?.saysOfSmokers ?? [] });
    await this.#keep(ask, made);
    if (!isOwn) return;
    for (const { stay: other, smoker } of this.#asks()) {
      if (other !== stay && smoker.id === ask.smoker.id) this.#waiting.add(other);
    }
  }

  async #keep(ask: CookAsk, made: Forecast | null): Promise<void> {
    const adopted = adoptedFrom(ask, made, MODEL_VERSION);
    await this.#parts.hub.put({
      id: `forecast-${randomUUID()}` as CommandId,
      ...{ personId: null, screenId: null },
      claimedAt: ask.now,
      earliestAt: () => ask.now,
      decide: (state) => decideForecast(state, ask.key, adopted),
    });
  }

  /** With what the others say of its smoker; it must not hear itself. */
  withHeard(ask: CookAsk): ForecastAsk {
    const heard = [...this.#known].flatMap(([stay, { says }]) =>
      stay === ask.stay ? [] : says.filter(({ id }) => id === ask.smoker.id),
    );
    const smoker = { ...ask.smoker, heard: heard.map(({ message }) => message) };
    return { ...ask, smoker };
  }
}
