import type { Timers } from '../../client/sync/index.ts';
import type {
  Beat,
  CommandMessage,
  Hello,
  HubLink,
  HubLinkListener,
  OpenLink,
  Question,
  ScreenLinkListener,
} from '../../shared/protocol/index.ts';
import { LinkLost } from '../../shared/protocol/index.ts';
import type { Agenda, CallOff } from './agenda.ts';
import type { Chance } from './chance.ts';
import type { Journal } from './journal.ts';
import type { Life } from './life.ts';
import { type Door, Line } from './line.ts';
import type { Way, What } from './way.ts';

export type MemoryLinkParts = {
  readonly way: Way;
  readonly door: Door;
  readonly agenda: Agenda;
  readonly chance: Chance;
  readonly journal: Journal;
  /** The screen's own, which stand still while it sleeps. */
  readonly timers: Timers;
  /** Has the page take something in: now, when it wakes, or never. */
  readonly receive: (run: () => void) => void;
  readonly page: Life;
  readonly onWake: (woke: () => void) => () => void;
};

/** As the link over a socket has it: so long without a word, and the line is held for dead. */
const SILENCE_MS = 5000;
const ANSWER_MS = 5000;
const RETRY_MS = [250, 3000] as const;

/** The screen's end of a link in memory, on a way that may drop, delay, double and reorder. */
export const memoryLink =
  (parts: MemoryLinkParts): OpenLink =>
  (hello, listener) =>
    new MemoryLink(parts, hello, listener);

class MemoryLink implements HubLink {
  readonly #parts: MemoryLinkParts;
  readonly #hello: () => Hello;
  readonly #listener: HubLinkListener;
  readonly #waiting = new Set<() => void>();
  readonly #stopWaking: () => void;
  #line: Line;
  #isUp = false;
  #isClosed = false;
  /** The one thing put off: to find the line dead, or to try again. */
  #callOff: CallOff = () => {};

  constructor(parts: MemoryLinkParts, hello: () => Hello, listener: HubLinkListener) {
    this.#parts = parts;
    this.#hello = hello;
    this.#listener = listener;
    this.#line = this.#connect();
    this.#stopWaking = parts.onWake(() => {
      if (!this.#isUp) this.#connectAnew();
    });
    parts.page.onEnd(() => this.#line.hangUp());
  }

  command(message: CommandMessage) {
    return this.#ask(`${message.kind} (${message.id})`, (hub) => hub.command(message));
  }

  question(message: Question) {
    return this.#ask('a question', async (hub) => hub.question(message));
  }

  beat(message: Beat) {
    return this.#ask(null, async (hub) => hub.beat(message));
  }

  whole(): void {
    if (this.#isUp) this.#line.tellHub('a call for the whole', (hub) => hub.whole());
  }

  close(): void {
    this.#isClosed = true;
    this.#isUp = false;
    this.#stopWaking();
    this.#callOff();
    this.#line.hangUp();
    this.#loseAll();
  }

  #connect(): Line {
    const { way, agenda, door, receive } = this.#parts;
    const line: Line = new Line(way, agenda, {
      welcome: () => this.#take(line, () => this.#welcomed()),
      show: (show) => receive(() => this.#shown(line, show)),
      tell: (tell) => this.#take(line, () => this.#told(tell)),
      closed: () => this.#take(line, () => this.#closedByHub()),
    });
    this.#line = line;
    line.knock(door, this.#hello());
    this.#lookAgain();
    return line;
  }

  #connectAnew(): void {
    this.#line.hangUp();
    this.#connect();
  }

  /** For the page, and only from the line it is on. */
  #take(line: Line, run: () => void): void {
    this.#parts.receive(() => {
      if (line === this.#line && !this.#isClosed) run();
    });
  }

  #welcomed(): void {
    if (this.#isUp) return;
    this.#isUp = true;
    this.#parts.journal.happened('line opened', this.#parts.way.name, 'is connected');
    this.#lookAgain();
    this.#listener.up();
  }

  /**
   * A view may still come from a line that was left: above the link nobody may rely on the order.
   */
  #shown(line: Line, show: (listener: HubLinkListener) => void): void {
    const isHere = line === this.#line;
    if (this.#isClosed || (isHere && !this.#isUp)) return;
    if (isHere) this.#lookAgain();
    else this.#parts.journal.count('message from a line that is gone');
    show(this.#listener);
  }

  #told(tell: (listener: HubLinkListener) => void): void {
    if (this.#isUp) tell(this.#listener);
  }

  #lookAgain(): void {
    this.#callOff();
    this.#callOff = this.#parts.timers.after(SILENCE_MS, () => {
      const { journal, way } = this.#parts;
      if (this.#isUp) journal.happened('line found dead', way.name, 'finds its line dead');
      this.#wentDown();
      if (!this.#isClosed) this.#connectAnew();
    });
  }

  #closedByHub(): void {
    const { timers, chance, journal, way } = this.#parts;
    if (this.#isUp) journal.write(way.name, 'hears its line end');
    this.#wentDown();
    if (this.#isClosed) return;
    this.#callOff();
    this.#callOff = timers.after(chance.between(...RETRY_MS), () => this.#connectAnew());
  }

  #wentDown(): void {
    if (!this.#isUp) return;
    this.#isUp = false;
    this.#loseAll();
    this.#listener.down();
  }

  #loseAll(): void {
    for (const lose of this.#waiting) lose();
    this.#waiting.clear();
  }

  #ask<T>(what: What, put: (hub: ScreenLinkListener) => Promise<T>): Promise<T> {
    if (!this.#isUp) return Promise.reject(new LinkLost());
    const line = this.#line;
    return new Promise((resolve, reject) => {
      const lose = () => {
        settle();
        reject(new LinkLost());
      };
      const callOff = this.#parts.timers.after(ANSWER_MS, lose);
      const settle = () => {
        callOff();
        this.#waiting.delete(lose);
      };
      const answered = (value: T) => {
        settle();
        this.#lookAgain();
        resolve(value);
      };
      this.#waiting.add(lose);
      line.tellHub(what, (hub, life) => {
        const replyName = what && `the answer to ${what}`;
        const reply = (value: T) =>
          line.tellScreen(replyName, () => this.#take(line, () => answered(value)));
        // A hub that fails gives no answer, as over a socket.
        put(hub).then(life.guard(reply), () => {});
      });
    });
  }
}
