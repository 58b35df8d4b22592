import type { Socket } from 'socket.io-client';
import { io } from 'socket.io-client';
import type {
  HubLink,
  HubLinkListener,
  HubToScreen,
  OpenLink,
  ScreenToHub,
} from '../../shared/protocol/index.ts';
import { LinkLost } from '../../shared/protocol/index.ts';
import { SILENCE_MS } from './pulse.ts';

type HubSocket = Socket<HubToScreen, ScreenToHub>;

export type SocketLinkOptions = {
  /** The hub's address; that of the page unless said. */
  readonly url?: string;
  /** Calls back when the device woke or its network returned; gives the way to stop. */
  readonly onWake?: (woke: () => void) => () => void;
};

/**
 * The link over socket.io, by web socket alone. It looks after its own connection: tries again with
 * back-off and jitter, at once when the device wakes, and hangs up on a hub that has gone silent,
 * so that a half-open line is noticed.
 */
export function socketLink({ url = '', onWake }: SocketLinkOptions = {}): OpenLink {
  return (hello, listener) => {
    const socket: HubSocket = io(url, {
      transports: ['websocket'],
      auth: (give) => give(hello()),
      reconnectionDelay: 250,
      reconnectionDelayMax: 3000,
      randomizationFactor: 0.5,
      timeout: SILENCE_MS,
      forceNew: true,
    });
    return new SocketLink(socket, listener, onWake);
  };
}

class SocketLink implements HubLink {
  readonly #socket: HubSocket;
  readonly #stopWaking: () => void;
  #isClosed = false;
  #watch: ReturnType<typeof setTimeout> | undefined;
  #retry: ReturnType<typeof setTimeout> | undefined;

  constructor(
    socket: HubSocket,
    listener: HubLinkListener,
    onWake: SocketLinkOptions['onWake'] = () => () => {},
  ) {
    this.#socket = socket;
    this.#listen(listener);
    this.#stopWaking = onWake(() => {
      if (!socket.connected) this.#connectAnew();
    });
  }

  command(message: Parameters<HubLink['command']>[0]) {
    return this.#ask((socket) => socket.emitWithAck('command', message));
  }

  question(message: Parameters<HubLink['question']>[0]) {
    return this.#ask((socket) => socket.emitWithAck('question', message));
  }

  beat(message: Parameters<HubLink['beat']>[0]) {
    return this.#ask((socket) => socket.emitWithAck('beat', message));
  }

  whole(): void {
    if (this.#socket.connected) this.#socket.emit('whole');
  }

  close(): void {
    this.#isClosed = true;
    this.#stopWaking();
    clearTimeout(this.#watch);
    clearTimeout(this.#retry);
    this.#socket.disconnect();
  }

  /**
   * Nothing is left to the library's own buffer: what gets no answer is put again by whoever asked.
   */
  async #ask<T>(emit: (socket: Pick<HubSocket, 'emitWithAck'>) => Promise<T>): Promise<T> {
    if (!this.#socket.connected) throw new LinkLost();
    try {
      const answer = await emit(this.#socket.timeout(SILENCE_MS));
      this.#heard();
      return answer;
    } catch {
      throw new LinkLost();
    }
  }

  #listen(listener: HubLinkListener): void {
    const socket = this.#socket;
    socket.on('connect', () => {
      this.#heard();
      listener.up();
    });
    socket.on('disconnect', (reason) => {
      clearTimeout(this.#watch);
      listener.down();
      // The library leaves it at that where the hub itself hung up.
      if (reason === 'io server disconnect') this.#connectLater();
    });
    socket.on('connect_error', () => {
      // Refused by the hub at the handshake, which the library takes for final.
      if (!socket.active) this.#connectLater();
    });
    socket.on('view', (message) => {
      this.#heard();
      listener.view(message);
    });
    socket.on('blank', (message) => {
      this.#heard();
      listener.blank(message);
    });
    socket.on('reload', () => listener.reload());
    socket.on('readOnly', (message) => listener.readOnly(message));
  }

  #heard(): void {
    clearTimeout(this.#watch);
    if (this.#isClosed) return;
    this.#watch = setTimeout(() => this.#connectAnew(), SILENCE_MS);
  }

  #connectLater(): void {
    if (this.#isClosed) return;
    clearTimeout(this.#retry);
    this.#retry = setTimeout(() => this.#socket.connect(), 1000 + Math.random() * 2000);
  }

  /** Leaves a line that may be dead, and whatever waiting the library was in, and connects now. */
  #connectAnew(): void {
    if (this.#isClosed) return;
    clearTimeout(this.#retry);
    this.#socket.disconnect().connect();
  }
}
