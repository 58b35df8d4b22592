import type { CommandId } from '../../shared/kernel/index.ts';
import type { Answer, CommandMessage } from '../../shared/protocol/index.ts';
import type { Command, PendingTap, Refusal } from '../../shared/view/index.ts';
import type { Shown } from './newest.ts';
import type { KeptTap, Outbox } from './outbox.ts';

/** A tap that the hub refused, until somebody has read why. */
export type RefusedTap = { readonly command: Command; readonly refusal: Refusal };

export type Entry = {
  readonly command: CommandMessage;
  /** Whether it is on this device's disk. */
  stored: boolean;
  /** The disk would not have it: it lives in this page alone. */
  missed: boolean;
  /** The hub has not the day that it was tapped on. */
  isApart: boolean;
  /** Resolves, and never rejects, once the outbox has it or has failed to keep it. */
  written: Promise<void>;
  /** The hub's last event for it; it stays laid over the view until the view has come that far. */
  answeredSeq: number | null;
};

/** More than a crew could read; the oldest is given up. */
const MOST_REFUSED = 100;

/**
 * This device's taps that the hub's view does not hold yet, in their order, and those that it
 * refused.
 */
export class Taps {
  readonly #outbox: Outbox;
  readonly #changed: () => void;
  #entries: Entry[] = [];
  #refused: RefusedTap[] = [];
  /** Writes go one after another, so that the outbox keeps the order of the finger. */
  #writes: Promise<unknown> = Promise.resolve();
  #isFailing = false;
  /** The log of the day that is shown. */
  #log: string | undefined;

  constructor(outbox: Outbox, changed: () => void) {
    this.#outbox = outbox;
    this.#changed = changed;
  }

  get pending(): readonly PendingTap[] {
    return this.#entries.filter(this.#isHere).map(({ command, stored }) => ({
      command,
      mark: stored ? 'here' : 'tapped',
    }));
  }

  /**
   * Those of another day count as one, which hangs on no line: the work that has its name here is
   * not what was tapped.
   */
  get refused(): readonly RefusedTap[] {
    const apart = this.#apart;
    const [first] = apart;
    if (!first) return this.#refused;
    const command = { ...first.command, kind: 'note', task: null, text: '' } as const;
    const refusal = { rule: 'another-day', taps: apart.length } as const;
    return [{ command, refusal }, ...this.#refused];
  }

  /** What waits for a hub that has its day, or till somebody has read of it. */
  get #apart(): readonly Entry[] {
    return this.#entries.filter((entry) => !this.#isHere(entry));
  }

  /** Another log may have tasks of the same names, and the hub knows of days. */
  readonly #isHere = ({ isApart, command: { of } }: Entry): boolean =>
    !isApart && (!of || !this.#log || of.log === this.#log);

  /** The outbox fails, or did, and a tap lives in this page alone since. */
  get isFailing(): boolean {
    return this.#isFailing || this.#missed.length > 0;
  }

  /** Nothing would be lost if the page were loaded anew. */
  get isSafe(): boolean {
    return this.#entries.every(({ stored, answeredSeq }) => stored || answeredSeq !== null);
  }

  next(): Entry | undefined {
    return this.#entries.find((entry) => entry.answeredSeq === null && this.#isHere(entry));
  }

  /** The furthest event that the hub promised and the view at `seq` does not show. */
  awaitedSeq(seq: number): number | null {
    const awaited = this.#entries.map(({ answeredSeq }) => answeredSeq ?? 0);
    const furthest = Math.max(0, ...awaited);
    return furthest > seq ? furthest : null;
  }

  add(command: CommandMessage): Promise<void> {
    const entry = entryOf(command, false);
    entry.written = this.#write(() => this.#keep(entry)).then((kept) => {
      entry.missed = !kept;
      this.#changed();
    });
    this.#entries.push(entry);
    return entry.written;
  }

  /** What the disk would not have before goes first, so that it keeps the order of the finger. */
  async #keep(entry: Entry): Promise<void> {
    for (const each of [...this.#missed, entry]) {
      await this.#outbox.put({ command: each.command, refusal: null });
      each.stored = true;
      each.missed = false;
    }
  }

  get #missed(): readonly Entry[] {
    return this.#entries.filter(({ missed, answeredSeq }) => missed && answeredSeq === null);
  }

  /** Takes over what the outbox holds: from before the page was loaded, or from another tab. */
  async readAgain(): Promise<void> {
    await this.#write(async () => this.#merge(await this.#outbox.all()));
    this.#changed();
  }

  /**
   * The hub's word on a tap. `remember: false` where another tab of this device has written it down
   * already.
   */
  async settle(id: CommandId, answer: Answer, { remember = true } = {}): Promise<void> {
    const entry = this.#entries.find(({ command }) => command.id === id);
    if (!entry || entry.answeredSeq !== null) return;
    const { command } = entry;
    if (answer.ok) {
      entry.answeredSeq = answer.seq;
    } else if (answer.refusal.rule === 'another-day') {
      entry.isApart = true;
      return this.#changed();
    } else {
      this.#entries = this.#entries.filter((other) => other !== entry);
      this.#refused = [...this.#refused, { command, refusal: answer.refusal }];
    }
    this.#changed();
    if (!remember) return;
    await this.#write(() =>
      answer.ok ? this.#outbox.remove(id) : this.#outbox.put({ command, refusal: answer.refusal }),
    );
    const [oldest] = this.#refused;
    if (oldest && this.#refused.length > MOST_REFUSED) await this.seen(oldest.command.id);
  }

  /** Somebody has read why it was refused; of one of another day, why all of them were. */
  async seen(id: CommandId, { remember = true } = {}): Promise<void> {
    const apart = this.#apart.map(({ command }) => command.id);
    const read = apart.includes(id) ? apart : [id];
    this.#forget(read);
    if (remember) await Promise.all(read.map((one) => this.#write(() => this.#outbox.remove(one))));
    // It may have been read from the disk again meanwhile.
    this.#forget(read);
  }

  #forget(ids: readonly CommandId[]): void {
    const isLeft = ({ command }: RefusedTap | Entry) => !ids.includes(command.id);
    this.#refused = this.#refused.filter(isLeft);
    this.#entries = this.#entries.filter(isLeft);
    this.#changed();
  }

  /** The view has come so far: what it holds need not be laid over it any longer. */
  shown({ seq, of }: Pick<Shown, 'seq' | 'of'>): void {
    // The next hub is asked again.
    if (of?.log !== this.#log) for (const entry of this.#entries) entry.isApart = false;
    this.#log = of?.log;
    this.#entries = this.#entries.filter(
      (entry) => entry.answeredSeq === null || (entry.answeredSeq > seq && this.#isHere(entry)),
    );
    this.#changed();
  }

  #merge(kept: readonly KeptTap[]): void {
    const known = new Map(this.#entries.map((entry) => [entry.command.id, entry]));
    const waiting = kept.filter(({ refusal }) => refusal === null);
    const isWaiting = new Set(waiting.map(({ command }) => command.id));
    const isOpen = ({ command, answeredSeq }: Entry) =>
      answeredSeq === null && !isWaiting.has(command.id);
    this.#entries = [
      ...this.#entries.filter(({ answeredSeq }) => answeredSeq !== null),
      ...waiting
        .filter(({ command }) => (known.get(command.id)?.answeredSeq ?? null) === null)
        .map(({ command }) => known.get(command.id) ?? entryOf(command, true)),
      ...this.#entries.filter(isOpen),
    ];
    const refused = kept.flatMap(({ command, refusal }) => (refusal ? [{ command, refusal }] : []));
    const isRefused = new Set(refused.map(({ command }) => command.id));
    const unwritten = this.#refused.filter(({ command }) => !isRefused.has(command.id));
    this.#refused = [...refused, ...unwritten];
  }

  /** Whether the outbox did it. */
  async #write(work: () => Promise<void>): Promise<boolean> {
    const before = this.#writes;
    const done = before.then(work).then(
      () => true,
      () => false,
    );
    this.#writes = done;
    this.#isFailing = !(await done);
    return done;
  }
}

const entryOf = (command: CommandMessage, stored: boolean): Entry => ({
  command,
  stored,
  missed: false,
  isApart: false,
  written: Promise.resolve(),
  answeredSeq: null,
});
