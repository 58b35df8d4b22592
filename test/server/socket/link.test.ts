import { createServer, type Server } from 'node:http';
import type { AddressInfo, Socket } from 'node:net';
import { vi } from 'vitest';
import { WebSocket } from 'ws';
import { socketLink } from '../../../client/sync/index.ts';
import { type Edge, openEdge } from '../../../server/socket/index.ts';
import type { ScreenLink, ScreenLinkListener } from '../../../shared/protocol/index.ts';
import { linkContract } from '../../contracts/link.ts';

type Serving = { readonly http: Server; readonly edge: Edge; readonly sockets: Set<Socket> };

/** A real server at a port, whose end is sudden: every socket is torn, nothing is said. */
async function serveAt(port: number, accept: (link: ScreenLink) => ScreenLinkListener) {
  const http = createServer();
  const sockets = new Set<Socket>();
  http.on('connection', (socket) => sockets.add(socket));
  const edge = openEdge(http, {
    accept,
    screenOf: ({ screenId }) => screenId,
    names: [],
    report: () => {},
  });
  await new Promise<void>((resolve) => http.listen(port, '127.0.0.1', resolve));
  return { http, edge, sockets };
}

async function tear({ http, edge, sockets }: Serving) {
  for (const socket of sockets) socket.destroy();
  await edge.close();
  http.close();
}

// Node 20 has none of its own; a browser's has the same face.
vi.stubGlobal('WebSocket', WebSocket);

linkContract('a socket', async () => {
  const unused = createServer();
  await new Promise<void>((resolve) => unused.listen(0, '127.0.0.1', resolve));
  const { port } = unused.address() as AddressInfo;
  await new Promise((resolve) => unused.close(resolve));
  let serving: Serving | null = null;
  const kill = async () => {
    if (serving) await tear(serving);
    serving = null;
  };
  return {
    serve: async (accept) => {
      serving = await serveAt(port, accept);
    },
    kill,
    openLink: socketLink({ url: `http://127.0.0.1:${port}` }),
    until: (happened) =>
      vi.waitUntil(happened, { timeout: 15_000, interval: 5 }).then(() => undefined),
    dispose: kill,
  };
});
