import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { type WebSocket, WebSocketServer } from 'ws';
import { BUILT_SCREENS } from '../../../server/built.mjs';
import type { Instant } from '../../../shared/kernel/index.ts';
import type { CommandMessage } from '../../../shared/protocol/index.ts';
import type { View } from '../../../shared/view/index.ts';

/** So long the hub takes to answer: longer than any ink may. */
const ANSWER_MS = 120;

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
};

export type StubKitchen = {
  readonly address: string;
  /** Shows a view on all screens. */
  show(view: View): void;
  close(): Promise<void>;
};

/**
 * The built pages, and a hub that says what it is given, so that a screen alone is measured. It
 * speaks as much of Engine.IO 4 and Socket.IO 5 as a screen needs.
 */
export async function openStubKitchen(parts: {
  readonly view: () => View;
  readonly now: () => Instant;
  /** What a command makes of the day; it is shown then. */
  readonly take: (message: CommandMessage) => void;
}): Promise<StubKitchen> {
  const server = createServer(async (request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const path = normalize(pathname === '/' ? '/index.html' : pathname);
    try {
      const file = await readFile(join(BUILT_SCREENS, path));
      response.setHeader('Content-Type', TYPES[extname(path)] ?? 'application/octet-stream');
      response.end(file);
    } catch {
      response.writeHead(404).end();
    }
  });
  const sockets = new WebSocketServer({ server, path: '/socket.io/' });
  const show = (view: View, to: Iterable<WebSocket> = sockets.clients) => {
    const frame = `42${JSON.stringify(['view', { epoch: 'stub', seq: view.seq, view }])}`;
    for (const socket of to) socket.send(frame);
  };
  const hear = (socket: WebSocket, frame: string) => {
    if (frame.startsWith('40')) {
      socket.send('40{"sid":"s"}');
      show(parts.view(), [socket]);
      return;
    }
    const asked = /^42(\d+)(\[.*)$/s.exec(frame);
    if (!asked) return;
    const [name, message] = JSON.parse(asked[2] ?? '[]') as [string, CommandMessage];
    const answer = (said: unknown) => socket.send(`43${asked[1]}${JSON.stringify([said])}`);
    if (name === 'beat') {
      answer({ seq: parts.view().seq, t1: parts.now(), t2: parts.now() });
    } else if (name === 'command') {
      setTimeout(() => {
        parts.take(message);
        answer({ ok: true, seq: parts.view().seq });
        show(parts.view());
      }, ANSWER_MS);
    }
  };
  sockets.on('connection', (socket) => {
    const open = { sid: 's', upgrades: [], pingInterval: 60_000, pingTimeout: 60_000 };
    socket.send(`0${JSON.stringify({ ...open, maxPayload: 1_000_000 })}`);
    socket.on('message', (data) => hear(socket, String(data)));
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    show: (view) => show(view),
    async close() {
      for (const socket of sockets.clients) socket.terminate();
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}
