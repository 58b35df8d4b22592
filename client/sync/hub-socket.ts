import type { Hello, HubToScreen, ScreenToHub } from '../../shared/protocol/index.ts';
import { LinkLost } from '../../shared/protocol/index.ts';

/** What a connection tells whoever holds it. After `over` it tells nothing more. */
export type HubSocketListener = {
  /** The hub has taken the screen in. */
  up(): void;
  heard<Name extends keyof HubToScreen>(name: Name, message: MessageOf<Name>): void;
  /** It is gone, or never came up. `isSentOff`: the hub itself ended it. */
  over(isSentOff: boolean): void;
};

type MessageOf<Name extends keyof HubToScreen> = Parameters<HubToScreen[Name]>[0];
/** What the hub answers. */
export type Asking = Exclude<keyof ScreenToHub, 'whole'>;
export type AskedWith<Name extends Asking> = Parameters<ScreenToHub[Name]>[0];
export type AnswerTo<Name extends Asking> = Parameters<Parameters<ScreenToHub[Name]>[1]>[0];

/**
 * Frames of Engine.IO 4 that carry packets of Socket.IO 5, both open protocols: their text form
 * over one web socket is all that a screen needs of them, and a twelfth of what their library
 * weighs.
 */
const PATH = '/socket.io/?EIO=4&transport=websocket';
const FRAME = { open: '0', close: '1', ping: '2', pong: '3' } as const;
const PACKET = { hello: '40', end: '41', event: '42', answer: '43', refused: '44' } as const;

/** One connection to the hub, from its opening to its end; another one takes another object. */
export class HubSocket {
  readonly #socket: WebSocket;
  /** Null where no answer came. */
  readonly #asked = new Map<number, (answer: { readonly message: unknown } | null) => void>();
  #listener: HubSocketListener | null;
  #isUp = false;
  #questions = 0;

  /** `url`: the hub's address as a page has it. `hello`: asked when the hub is there to hear it. */
  constructor(url: string, hello: () => Hello, listener: HubSocketListener) {
    this.#listener = listener;
    const address = new URL(PATH, url);
    address.protocol = address.protocol.replace('http', 'ws');
    this.#socket = new WebSocket(address);
    this.#socket.onmessage = ({ data }) => this.#read(String(data), hello);
    this.#socket.onerror = () => this.#end(false);
    this.#socket.onclose = () => this.#end(false);
  }

  /** Says something that has no answer; into the air where the connection is not up. */
  say(name: 'whole'): void {
    if (this.#isUp) this.#socket.send(`${PACKET.event}["${name}"]`);
  }

  /** Rejects with LinkLost where it ended first, or no answer came within so many milliseconds. */
  ask<Name extends Asking>(
    name: Name,
    message: AskedWith<Name>,
    withinMs: number,
  ): Promise<AnswerTo<Name>> {
    return new Promise((resolve, reject) => {
      if (!this.#isUp) return reject(new LinkLost());
      this.#questions += 1;
      const question = this.#questions;
      const waiting = setTimeout(() => this.#settle(question, null), withinMs);
      this.#asked.set(question, (answer) => {
        clearTimeout(waiting);
        if (answer) resolve(answer.message as AnswerTo<Name>);
        else reject(new LinkLost());
      });
      this.#socket.send(`${PACKET.event}${question}${JSON.stringify([name, message])}`);
    });
  }

  /** Ends it, and tells nobody. */
  leave(): void {
    if (this.#isUp) this.#socket.send(PACKET.end);
    this.#listener = null;
    this.#end(false);
  }

  #read(frame: string, hello: () => Hello): void {
    const packet = frame.slice(0, 2);
    if (frame === FRAME.ping) this.#socket.send(FRAME.pong);
    else if (frame === FRAME.close) this.#end(false);
    else if (frame.startsWith(FRAME.open)) {
      this.#socket.send(PACKET.hello + JSON.stringify(hello()));
    } else if (packet === PACKET.hello) {
      this.#isUp = true;
      this.#listener?.up();
    } else if (packet === PACKET.event) {
      const [name, message] = JSON.parse(frame.slice(2));
      this.#listener?.heard(name, message);
    } else if (packet === PACKET.answer) this.#take(frame);
    else if (packet === PACKET.end || packet === PACKET.refused) this.#end(true);
  }

  #take(frame: string): void {
    const from = frame.indexOf('[');
    const [message] = JSON.parse(frame.slice(from));
    this.#settle(Number(frame.slice(2, from)), { message });
  }

  #settle(question: number, answer: { readonly message: unknown } | null): void {
    this.#asked.get(question)?.(answer);
    this.#asked.delete(question);
  }

  #end(isSentOff: boolean): void {
    this.#isUp = false;
    // A line that is dead closes late, and what it says then is of no interest.
    this.#socket.onmessage = null;
    this.#socket.onclose = null;
    this.#socket.close();
    for (const question of this.#asked.keys()) this.#settle(question, null);
    const listener = this.#listener;
    this.#listener = null;
    listener?.over(isSentOff);
  }
}
