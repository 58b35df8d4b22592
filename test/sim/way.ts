import type { Agenda } from './agenda.ts';
import type { Chance } from './chance.ts';
import type { Happening, Journal } from './journal.ts';

/**
 * How a way treats what is sent over it. Shares are chances from nought to one, each message for
 * itself.
 */
export type Weather = {
  readonly delayMs: readonly [least: number, most: number];
  readonly lost: number;
  readonly doubled: number;
  /** May overtake what was sent before it. */
  readonly unordered: number;
  /** Where nothing gets through, and nobody is told. */
  readonly dead: 'nowhere' | 'toHub' | 'toScreen' | 'everywhere';
};

export type Direction = 'toHub' | 'toScreen';

/** A wired kitchen on a good day. */
export const CALM: Weather = {
  delayMs: [1, 12],
  lost: 0,
  doubled: 0,
  unordered: 0,
  dead: 'nowhere',
};

/**
 * What was sent on one line in one direction arrives in order, unless the weather has it otherwise.
 */
export type Lane = { lastDueMs: number };

/** What a message is called in the journal; null for what is not worth a line. */
export type What = string | null;

export type WayParts = {
  readonly name: string;
  readonly agenda: Agenda;
  readonly chance: Chance;
  readonly journal: Journal;
};

/** What lies between one screen and the hub: cable, radio, whatever stands in between. */
export class Way {
  weather: Weather = CALM;
  readonly #parts: WayParts;

  constructor(parts: WayParts) {
    this.#parts = parts;
  }

  get name(): string {
    return this.#parts.name;
  }

  /** Sends something off; `arrive` runs late, twice or never. */
  send(direction: Direction, lane: Lane, what: What, arrive: () => void): void {
    const { chance } = this.#parts;
    const { dead, lost, doubled } = this.weather;
    if (dead === direction || dead === 'everywhere' || chance.happens(lost)) {
      this.#note('message lost', 'loses', what);
      return;
    }
    this.#carry(lane, what, arrive);
    if (!chance.happens(doubled)) return;
    this.#note('message doubled', 'doubles', what);
    this.#carry(lane, what, arrive);
  }

  #carry(lane: Lane, what: What, arrive: () => void): void {
    const { agenda, chance } = this.#parts;
    const { delayMs, unordered } = this.weather;
    const dueMs = agenda.nowMs + chance.between(...delayMs);
    if (dueMs < lane.lastDueMs && chance.happens(unordered)) {
      this.#note('message overtaken', 'lets overtake', what);
      agenda.after(dueMs - agenda.nowMs, arrive);
      return;
    }
    lane.lastDueMs = Math.max(lane.lastDueMs, dueMs);
    agenda.after(lane.lastDueMs - agenda.nowMs, arrive);
  }

  #note(happening: Happening, verb: string, what: What): void {
    const { journal, name } = this.#parts;
    if (what === null) journal.count(happening);
    else journal.happened(happening, name, `${verb}: ${what}`);
  }
}
