import type { Server as HttpServer, IncomingMessage } from 'node:http';
import { Server } from 'socket.io';
import type { ScreenId } from '../../shared/kernel/index.ts';
import {
  type Blank,
  type Hello,
  type HubToScreen,
  messageSchemas,
  PROTOCOL,
  type ScreenLink,
  type ScreenLinkListener,
} from '../../shared/protocol/index.ts';
import { guarded, type Report } from '../report.ts';
import { createFanOut, type FanOut } from './fan-out.ts';
import { type Anything, listenTo, type ScreenSocket, type SocketData } from './listen-to.ts';
import { isOurPage, knockOf } from './origin.ts';
import { createVisitors } from './visitors.ts';

/** What a screen is told that nobody has let in; it learns nothing of the day. */
const STRANGER: Blank = { epoch: '', seq: 0, refusal: { rule: 'screen-unknown' } };

const PACKED_FROM_BYTES = 64 * 1024;
/** More screens than a kitchen has; behind one address there may be all of them. */
const PER_ADDRESS_MAX = 100;

export type EdgeParts = {
  readonly accept: (link: ScreenLink) => ScreenLinkListener;
  /** Which screen says this hello; null for one that was not let in. */
  readonly screenOf: (hello: Hello) => ScreenId | null;
  /** Names this machine goes by, beside its addresses. */
  readonly names: readonly string[];
  /** Whether a socket may be had in this way at all; left out: in any. */
  readonly isSafe?: (request: IncomingMessage) => boolean;
  readonly report: Report;
};

export type Edge = { close(): Promise<void> };

/** The door for sockets: checks who knocks, parses all they say, and hands it to the hub. */
export function openEdge(http: HttpServer, parts: EdgeParts): Edge {
  const { accept, screenOf, names, isSafe = () => true, report } = parts;
  const visitors = createVisitors(PER_ADDRESS_MAX);
  const io = new Server<Anything, HubToScreen, Record<string, never>, SocketData>(http, {
    transports: ['websocket'],
    serveClient: false,
    // A message of a screen is some hundred bytes.
    maxHttpBufferSize: 16 * 1024,
    // A screen notices a dead link within 9 seconds; by default it would take 45.
    pingInterval: 5_000,
    pingTimeout: 4_000,
    connectTimeout: 5_000,
    // A whole day, as a desk gets it, packs to an eighth. Walls get so little that packing it for
    // each of them would only keep a tap waiting.
    perMessageDeflate: { threshold: PACKED_FROM_BYTES, serverNoContextTakeover: true },
    allowRequest: (request, decide) => {
      const refused = whyRefused(request);
      if (refused) report({ level: 'warning', what: refused, ...whoKnocks(request) });
      decide(refused, refused === null);
    },
  });

  function whyRefused(request: IncomingMessage): string | null {
    if (!isOurPage(knockOf(request), names)) return 'a page from elsewhere wanted a socket';
    if (!isSafe(request)) return 'a socket was wanted without TLS';
    return visitors.hasRoom(addressOf(request)) ? null : 'too many sockets from one address';
  }

  io.engine.on('connection', (visit: { request: IncomingMessage; once: OnClose }) => {
    const address = addressOf(visit.request);
    visitors.come(address);
    visit.once('close', () => visitors.go(address));
  });
  io.use((socket, next) => {
    const hello = readHello(socket.handshake.auth);
    if (hello.ok) socket.data.hello = hello.hello;
    next(hello.ok ? undefined : new Error(hello.why));
  });
  const fanOut = createFanOut((ids, message) => io.to(ids).emit('view', message));
  io.on('connection', (socket) => {
    const { hello } = socket.data;
    // It speaks another version: it is told so and otherwise left alone until it comes anew.
    if (hello === null) socket.emit('reload', { protocol: PROTOCOL });
    else guarded(report, 'a screen could not be taken in', () => takeIn(socket, hello));
  });

  function takeIn(socket: ScreenSocket, said: Hello) {
    const screenId = screenOf(said);
    // Nothing is taken from it: its taps wait in its outbox till it is let in.
    if (screenId === null) return socket.emit('blank', STRANGER);
    const { token: _, ...hello } = { ...said, screenId };
    socket.data.hello = hello;
    return listenTo(socket, accept(linkOf(socket, hello, fanOut)), report);
  }
  return { close: () => io.close() };
}

type OnClose = (event: 'close', run: () => void) => void;

function linkOf(socket: ScreenSocket, hello: Hello, fanOut: FanOut): ScreenLink {
  return {
    hello,
    view: (message) => fanOut(socket.id, message),
    blank: (message) => void socket.emit('blank', message),
    reload: (message) => void socket.emit('reload', message),
    readOnly: (message) => void socket.emit('readOnly', message),
    wanted: (message) => void socket.emit('wanted', message),
    close: () => void socket.disconnect(true),
  };
}

const schemas = messageSchemas();

type HelloRead =
  /** Null: of another version, of which nothing more is understood. */
  | { readonly ok: true; readonly hello: Hello | null }
  | { readonly ok: false; readonly why: string };

function readHello(raw: unknown): HelloRead {
  const version = schemas.protocol.safeParse(raw);
  if (!version.success) return { ok: false, why: 'a screen says which protocol it speaks' };
  if (version.data.protocol !== PROTOCOL) return { ok: true, hello: null };
  const hello = schemas.hello.safeParse(raw);
  return hello.success
    ? { ok: true, hello: hello.data }
    : { ok: false, why: 'a screen says who it is and what it shows' };
}

const addressOf = (request: IncomingMessage) => request.socket.remoteAddress ?? 'nowhere';

function whoKnocks(request: IncomingMessage) {
  return { address: addressOf(request), origin: request.headers.origin };
}
