import { EMPTY_HEAD, linkHash } from '../../server/store/chain.ts';
import { type Entry, fromBytes, type MemoryDisk } from '../../server/store/index.ts';
import { type DayState, type Event, emptyDay, fold } from '../../shared/day/index.ts';
import type { CommandId } from '../../shared/kernel/index.ts';
import type { Verdict } from './verdict.ts';

/** Where the events of one command lie in the log. */
export type Stretch = { readonly first: number; readonly last: number };

/**
 * Watches the disk itself: that the log only grows, that its chain holds, and what each command
 * left in it.
 */
export class LogWitness {
  readonly #disk: MemoryDisk;
  readonly #verdict: Verdict;
  readonly #entries: Entry[] = [];
  readonly #events: Event[] = [];
  readonly #days: DayState[] = [emptyDay()];
  readonly #stretches = new Map<CommandId, Stretch>();

  constructor(disk: MemoryDisk, verdict: Verdict) {
    this.#disk = disk;
    this.#verdict = verdict;
  }

  get seq(): number {
    return this.#entries.length;
  }

  /**
   * The day as the log tells it up to and with entry `seq`; undefined where there is no such entry.
   */
  dayAt(seq: number): DayState | undefined {
    return this.#days[seq];
  }

  /** What happened after entry `seq`, up to and with entry `upTo`. */
  eventsAfter(seq: number, upTo: number): readonly Event[] {
    return this.#events.slice(seq, upTo);
  }

  stretchOf(command: CommandId): Stretch | undefined {
    return this.#stretches.get(command);
  }

  /** Takes in what was added since; gives the days that it made. */
  look(): readonly DayState[] {
    const stored = this.#disk.entries();
    const from = this.#entries.length;
    if (stored.length === from) return [];
    this.#verdict.holds('grows', stored.length >= from, () => `${from} entries became fewer`);
    for (const entry of stored.slice(from)) this.#takeIn(entry);
    return this.#days.slice(from + 1);
  }

  /**
   * Of what is on the disk nothing may be another. What a power cut takes of the end was promised
   * to nobody.
   */
  lookThrough({ isAfterPowerCut }: { readonly isAfterPowerCut: boolean }): void {
    const stored = this.#disk.entries();
    if (!isAfterPowerCut) this.look();
    this.#entries.length = Math.min(this.#entries.length, stored.length);
    this.#events.length = this.#entries.length;
    this.#days.length = this.#entries.length + 1;
    for (const [command, { last }] of this.#stretches) {
      if (last > this.#entries.length) this.#stretches.delete(command);
    }
    const changed = this.#entries.find(({ hash }, at) => stored[at]?.hash !== hash);
    this.#verdict.holds('grows', !changed, () => `entry ${changed?.seq} is another one now`);
  }

  #takeIn(entry: Entry): void {
    const before = this.#entries.at(-1);
    const { seq, hash, bytes, commandId } = entry;
    const follows =
      seq === (before?.seq ?? 0) + 1 && linkHash(before?.hash ?? EMPTY_HEAD.hash, bytes) === hash;
    this.#verdict.holds('grows', follows, () => `entry ${seq} does not follow ${before?.seq}`);
    const read = fromBytes(bytes);
    if (!read.ok) {
      this.#verdict.breaks('grows', `entry ${seq} is ${read.why}`);
      return;
    }
    const known = this.#stretches.get(commandId);
    this.#verdict.holds('once', !known || known.last === seq - 1, () => {
      return `${commandId} is in the log at ${known?.first} and again at ${seq}`;
    });
    this.#stretches.set(commandId, { first: known?.first ?? seq, last: seq });
    this.#entries.push(entry);
    this.#events.push(read.event);
    this.#days.push(fold(this.#days[this.#days.length - 1] as DayState, read.event));
  }
}
