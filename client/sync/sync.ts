import type { CommandId, Instant, PersonId } from '../../shared/kernel/index.ts';
import type {
  Answer,
  HubLink,
  HubLinkListener,
  Question,
  QuestionAnswer,
  ReadOnly,
} from '../../shared/protocol/index.ts';
import { LinkLost, PROTOCOL } from '../../shared/protocol/index.ts';
import type { Command, Intent } from '../../shared/view/index.ts';
import { DayKeeper } from './day-keeper.ts';
import { Drain } from './drain.ts';
import { HubClock } from './hub-clock.ts';
import { hurriedOutbox } from './hurried-outbox.ts';
import type { Shown } from './newest.ts';
import { Newest } from './newest.ts';
import type { OutboxNews, SyncPorts } from './ports.ts';
import { Pulse } from './pulse.ts';
import type { Sync, SyncState } from './sync-state.ts';
import { Taps } from './taps.ts';

/** A hub that is there has answered by then; else a page with a day to show says it is alone. */
const LOOKING_MS = 1500;

/** One screen's side of the talk with the hub; everything outside of it comes in by the ports. */
export function createSync(ports: SyncPorts): Sync {
  return new ScreenSync(ports);
}

class ScreenSync implements Sync {
  readonly #ports: SyncPorts;
  readonly #newest = new Newest();
  readonly #hubClock: HubClock;
  readonly #taps: Taps;
  readonly #drain: Drain;
  readonly #pulse: Pulse;
  readonly #keeper: DayKeeper | null;
  readonly #link: HubLink;
  readonly #listeners = new Set<() => void>();
  readonly #stopWaking: () => void;
  #state: SyncState | null = null;
  #isUp = false;
  #isClosed = false;
  #aloneSince: Instant | null = null;
  /** Until the hub is heard: when it was last, before this page was loaded. */
  #recalledAt: Instant | null = null;
  #readOnly: ReadOnly | null = null;
  #isReloadAsked = false;
  #behindAtSeq: number | null = null;

  constructor(ports: SyncPorts) {
    this.#ports = ports;
    const { clock, timers, outbox, lastView } = ports;
    this.#hubClock = new HubClock(clock);
    const keeping = lastView && { lastView, clock, timers, hubClock: this.#hubClock };
    this.#keeper = keeping ? new DayKeeper(keeping) : null;
    this.#taps = new Taps(hurriedOutbox(outbox, timers), () => this.#changed());
    this.#drain = new Drain({
      taps: this.#taps,
      timers,
      isOpen: () => this.#isUp && !this.#isClosed && ports.drainer.isMine,
      send: (command) => this.#link.command(command),
      settled: (command, answer) => this.#settled(command, answer),
    });
    this.#pulse = new Pulse({
      clock,
      timers,
      hubClock: this.#hubClock,
      beat: (t0) => this.#link.beat({ t0 }),
      answered: ({ seq }) => this.#catchUpTo(seq ?? 0),
      silent: () => this.#fellSilent(),
    });
    this.#link = ports.openLink(() => this.#hello(), this.#listener());
    ports.drainer.listen({ mine: () => this.#readOutbox(), news: (news) => this.#hear(news) });
    this.#stopWaking = ports.onWake?.(() => this.#woke()) ?? (() => {});
    this.#readOutbox();
    void this.#recall();
  }

  get state(): SyncState {
    this.#state ??= this.#makeState();
    return this.#state;
  }

  hubNow(): Instant {
    return this.#hubClock.now();
  }

  tap(intent: Intent, personId: PersonId | null = this.#ports.personId ?? null): Command {
    const { newId, screenId, drainer } = this.#ports;
    const id = newId() as CommandId;
    const { of } = this.#newest.shown ?? {};
    const command = { ...intent, id, personId, screenId, tappedAt: this.hubNow(), of };
    const written = this.#taps.add(command);
    this.#changed();
    void written.then(() => (drainer.isMine ? this.#drain.run() : drainer.tell({ kind: 'added' })));
    return command;
  }

  async ask(question: Question): Promise<QuestionAnswer> {
    if (!this.#isUp) throw new LinkLost();
    return this.#link.question(question);
  }

  seen(command: CommandId): void {
    void this.#taps.seen(command);
    this.#ports.drainer.tell({ kind: 'seen', id: command });
  }

  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  close(): void {
    this.#isClosed = true;
    this.#stopWaking();
    this.#pulse.close();
    this.#keeper?.close();
    this.#ports.drainer.close();
    this.#link.close();
    this.#listeners.clear();
  }

  #listener(): HubLinkListener {
    return {
      up: () => {
        this.#isUp = true;
        this.#readOnly = null;
        this.#newest.connected();
        this.#heard();
        this.#pulse.up();
        void this.#drain.run();
        this.#changed();
      },
      down: () => {
        this.#isUp = false;
        this.#pulse.down();
        this.#changed();
      },
      view: (message) => {
        this.#hubClock.guess(message.view.at);
        this.#show(message);
      },
      blank: (message) => this.#show(message),
      reload: () => {
        this.#isReloadAsked = true;
        this.#changed();
      },
      readOnly: (message) => {
        this.#readOnly = message;
        this.#changed();
      },
    };
  }

  #hello() {
    const { screenId, face, token } = this.#ports;
    const shown = this.#newest.shown;
    return { protocol: PROTOCOL, screenId, face, token, epoch: shown?.epoch, seq: shown?.seq };
  }

  #show(message: Shown): void {
    this.#heard();
    this.#pulse.heard();
    if (!this.#newest.take(message)) return;
    if ('view' in message) this.#keeper?.shown(message);
    else this.#keeper?.forget();
    this.#taps.shown(message);
    void this.#drain.run();
  }

  /** What this device was last shown stands until the hub says more. */
  async #recall(): Promise<void> {
    const day = await this.#keeper?.recall();
    if (!day || this.#isClosed || !this.#newest.recall(day.message)) return;
    this.#taps.shown(day.message);
    this.#recalledAt = day.heard.hubAt;
    this.#ports.timers.after(LOOKING_MS, () => {
      if (!this.#isUp) this.#fellSilent();
    });
  }

  #heard(): void {
    this.#recalledAt = null;
    this.#keeper?.heard();
    if (this.#aloneSince === null) return;
    this.#aloneSince = null;
    this.#changed();
  }

  #fellSilent(): void {
    this.#aloneSince = this.#recalledAt ?? this.#hubClock.at(this.#pulse.heardAtMs);
    this.#changed();
  }

  /** The hub is further than this screen, by what a beat or an answer said. */
  #catchUpTo(seq: number): void {
    this.#heard();
    const held = this.#newest.shown?.seq ?? 0;
    const isBehind = seq > held || this.#taps.awaitedSeq(held) !== null;
    // Once may only be a view still under way.
    if (isBehind && this.#behindAtSeq === held) this.#link.whole();
    this.#behindAtSeq = isBehind ? held : null;
  }

  #woke(): void {
    this.#hubClock.forget();
    if (this.#isUp) this.#pulse.beatNow();
  }

  #settled(command: Command, answer: Answer): void {
    this.#pulse.heard();
    this.#taps.shown(this.#newest.shown ?? { seq: 0 });
    this.#ports.drainer.tell({ kind: 'settled', id: command.id, answer });
  }

  #hear(news: OutboxNews): void {
    if (news.kind === 'added') this.#readOutbox();
    else if (news.kind === 'seen') void this.#taps.seen(news.id, { remember: false });
    else void this.#taps.settle(news.id, news.answer, { remember: false });
  }

  #readOutbox(): void {
    void this.#taps.readAgain().then(() => this.#drain.run());
  }

  #changed(): void {
    this.#state = null;
    for (const listener of this.#listeners) listener();
  }

  #makeState(): SyncState {
    const shown = this.#newest.shown;
    return {
      view: shown && 'view' in shown ? shown.view : null,
      seq: shown?.seq ?? 0,
      blank: shown && 'refusal' in shown ? shown.refusal : null,
      pending: this.#taps.pending,
      refused: this.#taps.refused,
      isUp: this.#isUp,
      aloneSince: this.#aloneSince,
      isOutboxFailing: this.#taps.isFailing,
      readOnly: this.#readOnly,
      isReloadDue: this.#isReloadAsked && this.#taps.isSafe,
    };
  }
}
