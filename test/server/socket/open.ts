import { once } from 'node:events';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { io, type Socket } from 'socket.io-client';
import { systemClock } from '../../../server/clock.ts';
import { type Hub, openHub } from '../../../server/hub/index.ts';
import type { ReportLine } from '../../../server/report.ts';
import { openEdge } from '../../../server/socket/index.ts';
import { memoryDisk, openMemoryLog } from '../../../server/store/index.ts';
import type { ScreenId } from '../../../shared/kernel/index.ts';
import { PROTOCOL } from '../../../shared/protocol/index.ts';
import { type NoteDay, noteRules } from '../hub/note-day.ts';
import { trim } from '../hub/setting.ts';

export const hello = { protocol: PROTOCOL, screenId: 'wall-1', face: trim };

export type Door = {
  readonly port: number;
  readonly hub: Hub<NoteDay>;
  readonly reports: ReportLine[];
  /** A screen that has not knocked yet. */
  screen(auth?: object, headers?: Record<string, string>): Socket;
  close(): Promise<void>;
};

/** A hub of notes behind a real socket on this machine. */
export async function openDoor(): Promise<Door> {
  const reports: ReportLine[] = [];
  const report = (line: ReportLine) => void reports.push(line);
  const log = openMemoryLog(memoryDisk());
  const hub = await openHub({ log, rules: noteRules, clock: systemClock(), epoch: 'e1', report });
  const http = createServer();
  const edge = openEdge(http, {
    accept: hub.accept,
    // Whoever brings a token is the screen that it names; without one, the screen it says.
    screenOf: ({ screenId, token }) =>
      token === 'lost' ? null : ((token as ScreenId) ?? screenId),
    names: [],
    report,
  });
  http.listen(0, '127.0.0.1');
  await once(http, 'listening');
  const { port } = http.address() as AddressInfo;
  const sockets: Socket[] = [];
  return {
    port,
    hub,
    reports,
    screen(auth = hello, extraHeaders = {}) {
      const socket = io(`http://127.0.0.1:${port}`, {
        auth,
        extraHeaders,
        transports: ['websocket'],
        reconnection: false,
        forceNew: true,
      });
      sockets.push(socket);
      return socket;
    },
    async close() {
      for (const socket of sockets) socket.disconnect();
      await hub.close();
      await edge.close();
    },
  };
}

/** The first argument of the next event of this name. */
export const next = <T = unknown>(socket: Socket, event: string): Promise<T> =>
  new Promise((resolve) => {
    socket.once(event, resolve);
  });
