import type { Hello, HubLink, HubLinkListener, OpenLink } from '../../shared/protocol/index.ts';
import { LinkLost } from '../../shared/protocol/index.ts';
import { type AnswerTo, type AskedWith, type Asking, HubSocket } from './hub-socket.ts';
import { SILENCE_MS } from './pulse.ts';

export type SocketLinkOptions = {
  /** The hub's address; that of the page unless said. */
  readonly url?: string;
  /** Calls back when the device woke or its network returned; gives the way to stop. */
  readonly onWake?: (woke: () => void) => () => void;
};

const FIRST_RETRY_MS = 250;
const LAST_RETRY_MS = 3000;
/** Where the hub itself sent this screen off, it is not to be asked at once. */
const SENT_OFF_RETRY_MS = 2000;

/**
 * The link over a web socket. It looks after its own connection: tries again with back-off and
 * jitter, at once when the device wakes, and hangs up on a hub that has gone silent, so that a
 * half-open line is noticed.
 */
export function socketLink(options: SocketLinkOptions = {}): OpenLink {
  return (hello, listener) => new SocketLink(hello, listener, options);
}

class SocketLink implements HubLink {
  readonly #url: string;
  readonly #hello: () => Hello;
  readonly #listener: HubLinkListener;
  readonly #stopWaking: () => void;
  #socket: HubSocket | null = null;
  #isUp = false;
  #isClosed = false;
  #retries = 0;
  #watch: ReturnType<typeof setTimeout> | undefined;
  #retry: ReturnType<typeof setTimeout> | undefined;

  constructor(hello: () => Hello, listener: HubLinkListener, options: SocketLinkOptions) {
    const { url = location.origin, onWake = () => () => {} } = options;
    this.#url = url;
    this.#hello = hello;
    this.#listener = listener;
    this.#connect();
    this.#stopWaking = onWake(() => {
      if (!this.#isUp) this.#connect();
    });
  }

  command(message: Parameters<HubLink['command']>[0]) {
    return this.#ask('command', message);
  }

  question(message: Parameters<HubLink['question']>[0]) {
    return this.#ask('question', message);
  }

  beat(message: Parameters<HubLink['beat']>[0]) {
    return this.#ask('beat', message);
  }

  whole(): void {
    this.#socket?.say('whole');
  }

  close(): void {
    this.#isClosed = true;
    this.#stopWaking();
    this.#leave();
  }

  /** What gets no answer is put again by whoever asked. */
  async #ask<Name extends Asking>(name: Name, message: AskedWith<Name>): Promise<AnswerTo<Name>> {
    if (!this.#socket) throw new LinkLost();
    const answer = await this.#socket.ask(name, message, SILENCE_MS);
    this.#heard();
    return answer;
  }

  /** Leaves a line that may be dead, and whatever waiting it was in, and connects now. */
  #connect(): void {
    this.#leave();
    if (this.#isClosed) return;
    const listener = this.#listener;
    this.#watch = setTimeout(() => this.#connectLater(), SILENCE_MS);
    this.#socket = new HubSocket(this.#url, this.#hello, {
      up: () => {
        this.#isUp = true;
        this.#retries = 0;
        this.#heard();
        listener.up();
      },
      heard: (name, message) => {
        if (name === 'view' || name === 'blank') this.#heard();
        // Names and messages of a protocol belong together: its types say which to which.
        (listener[name] as ((heard: typeof message) => void) | undefined)?.(message);
      },
      over: (isSentOff) => this.#connectLater(isSentOff),
    });
  }

  #connectLater(isSentOff = false): void {
    this.#leave();
    if (this.#isClosed) return;
    const afterMs = isSentOff
      ? SENT_OFF_RETRY_MS
      : Math.min(LAST_RETRY_MS, FIRST_RETRY_MS * 2 ** this.#retries);
    this.#retries += 1;
    // All the screens of a kitchen lose a hub at once; they are not to come back at once.
    this.#retry = setTimeout(() => this.#connect(), afterMs * (0.5 + Math.random()));
  }

  #leave(): void {
    clearTimeout(this.#watch);
    clearTimeout(this.#retry);
    this.#socket?.leave();
    this.#socket = null;
    if (!this.#isUp) return;
    this.#isUp = false;
    this.#listener.down();
  }

  #heard(): void {
    clearTimeout(this.#watch);
    if (!this.#isClosed) this.#watch = setTimeout(() => this.#connect(), SILENCE_MS);
  }
}
