import {
  createSync,
  type KeptTap,
  memoryOutbox,
  type Outbox,
  type Sync,
  type SyncPorts,
  soleDrainer,
  type Timers,
} from '../../client/sync/index.ts';
import type { CommandId, ScreenId } from '../../shared/kernel/index.ts';
import type { HubLinkListener, OpenLink } from '../../shared/protocol/index.ts';
import type { Command, Face } from '../../shared/view/index.ts';
import type { Agenda } from './agenda.ts';
import type { Chance } from './chance.ts';
import type { DeviceClock } from './device-clock.ts';
import type { Journal } from './journal.ts';
import { Life } from './life.ts';
import type { Door } from './line.ts';
import { memoryLink } from './memory-link.ts';
import type { Way } from './way.ts';

/** What a device has to tell those who watch the run. */
export type DeviceWatch = {
  /** A tap is on the device's disk. */
  kept(command: Command): void;
  /** What the page draws from has changed. */
  changed(device: Device): void;
  /** The clock of the hub was compared; what went before a sleep no longer counts. */
  beaten(device: Device, tripMs: number): void;
  clockLost(device: Device): void;
};

export type DeviceParts = {
  readonly screenId: ScreenId;
  readonly face: Face;
  readonly agenda: Agenda;
  readonly chance: Chance;
  readonly journal: Journal;
  readonly clock: DeviceClock;
  readonly way: Way;
  readonly door: Door;
  readonly watch: DeviceWatch;
  /** Makes the page's sync; a planted fault makes it otherwise. */
  readonly create?: (ports: SyncPorts) => Sync;
};

type Page = { readonly life: Life; readonly sync: Sync };

const STORE_WRITE_MS = [1, 30] as const;
const STORE_WORD_MS = [0, 5] as const;
const LOAD_MS = [300, 2500] as const;

/**
 * One device in the kitchen with the real sync of a page on it: it sleeps, wakes, is loaded anew,
 * has a disk.
 */
export class Device {
  readonly screenId: ScreenId;
  readonly face: Face;
  readonly way: Way;
  readonly #parts: DeviceParts;
  readonly #kept = new Map<CommandId, KeptTap>();
  readonly #onWake = new Set<() => void>();
  #page: Page | null = null;
  #isAsleep = false;
  #missed: (() => void)[] = [];
  #ids = 0;
  #pages = 0;
  isStoreFull = false;

  constructor(parts: DeviceParts) {
    this.#parts = parts;
    this.screenId = parts.screenId;
    this.face = parts.face;
    this.way = parts.way;
  }

  /** The sync of the page, as long as there is one and somebody can look at it. */
  get sync(): Sync | null {
    return this.#isAsleep ? null : (this.#page?.sync ?? null);
  }

  get isAsleep(): boolean {
    return this.#isAsleep;
  }

  /** Which page since the beginning this is. */
  get page(): number {
    return this.#pages;
  }

  /** What its disk holds. */
  get outbox(): readonly KeptTap[] {
    return [...this.#kept.values()];
  }

  load(): void {
    if (this.#page || this.#isAsleep) return;
    const life = new Life();
    this.#pages += 1;
    const sync = (this.#parts.create ?? createSync)(this.#ports(life));
    this.#page = { life, sync };
    sync.subscribe(life.guard(() => this.#parts.watch.changed(this)));
  }

  /** The page is gone with all that was only in its memory, and comes again. */
  loadAnew(): void {
    const { agenda, chance } = this.#parts;
    if (!this.#page) return;
    this.#parts.watch.clockLost(this);
    this.#page.life.end();
    this.#page = null;
    this.#missed = [];
    this.#onWake.clear();
    agenda.after(chance.between(...LOAD_MS), () => this.load());
  }

  sleep(): void {
    if (this.#isAsleep) return;
    this.#isAsleep = true;
    this.#parts.clock.fallAsleep();
    this.#parts.watch.clockLost(this);
  }

  wake(): void {
    if (!this.#isAsleep) return;
    this.#isAsleep = false;
    this.#parts.clock.wake();
    const missed = this.#missed;
    this.#missed = [];
    for (const run of missed) run();
    for (const woke of this.#onWake) woke();
    this.load();
  }

  setClockBy(ms: number): void {
    this.#parts.clock.setBy(ms);
  }

  #ports(life: Life): SyncPorts {
    const { clock, screenId, face } = this.#parts;
    const timers = this.#timers(life);
    return {
      openLink: this.#openLink(life, timers),
      outbox: this.#outbox(life),
      clock,
      timers,
      drainer: soleDrainer(),
      newId: () => `${screenId}-${++this.#ids}`,
      screenId,
      face,
      onWake: (woke) => this.#listenForWaking(woke),
    };
  }

  #listenForWaking(woke: () => void): () => void {
    this.#onWake.add(woke);
    return () => this.#onWake.delete(woke);
  }

  /** For the page: now, when the device wakes, or never. */
  #receive(life: Life, run: () => void): void {
    if (life.isOver) return;
    if (this.#isAsleep) this.#missed.push(life.guard(run));
    else run();
  }

  #timers(life: Life): Timers {
    const { agenda, clock } = this.#parts;
    return {
      after: (delayMs, run) => {
        let isOff = false;
        const callOff = agenda.after(clock.worldMs(delayMs), () =>
          this.#receive(life, () => {
            if (!isOff) run();
          }),
        );
        return () => {
          isOff = true;
          callOff();
        };
      },
    };
  }

  #openLink(life: Life, timers: Timers): OpenLink {
    const { way, door, agenda, chance, journal, watch } = this.#parts;
    const open = memoryLink({
      way,
      door,
      agenda,
      chance,
      journal,
      timers,
      receive: (run) => this.#receive(life, run),
      page: life,
      onWake: (woke) => this.#listenForWaking(woke),
    });
    return (hello, listener: HubLinkListener) => {
      const link = open(hello, listener);
      return {
        command: (message) => link.command(message),
        question: (message) => link.question(message),
        beat: async (message) => {
          const sentAtMs = agenda.nowMs;
          const answer = await link.beat(message);
          watch.beaten(this, agenda.nowMs - sentAtMs);
          return answer;
        },
        whole: () => link.whole(),
        close: () => link.close(),
      };
    };
  }

  /** A disk takes its time, may be full, and may have written what the page never hears of. */
  #outbox(life: Life): Outbox {
    const { agenda, chance, watch } = this.#parts;
    const store = memoryOutbox(this.#kept);
    const soon = (range: readonly [number, number], run: () => void) =>
      agenda.after(chance.between(...range), life.guard(run));
    const slowly = <T>(work: () => Promise<T>, isWrite: boolean): Promise<T> =>
      new Promise((resolve, reject) => {
        const say = (run: () => void) => soon(STORE_WORD_MS, () => this.#receive(life, run));
        soon(STORE_WRITE_MS, () => {
          if (isWrite && this.isStoreFull) {
            say(() => reject(new Error('the store of this device is full')));
          } else {
            void work().then((value) => say(() => resolve(value)));
          }
        });
      });
    return {
      all: () => slowly(() => store.all(), false),
      put: (tap) =>
        slowly(async () => {
          await store.put(tap);
          watch.kept(tap.command);
        }, true),
      remove: (id) => slowly(() => store.remove(id), false),
    };
  }
}
