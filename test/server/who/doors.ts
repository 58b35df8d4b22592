import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { io, type Socket } from 'socket.io-client';
import type { ReportLine } from '../../../server/report.ts';
import { startHub } from '../../../server/start.ts';
import { must, type PersonId, type StationId } from '../../../shared/kernel/index.ts';
import {
  type Answer,
  type Blank,
  type LetIn,
  PROTOCOL,
  type WhoList,
} from '../../../shared/protocol/index.ts';
import type { Face } from '../../../shared/view/index.ts';

export const desk: Face = { kind: 'desk' };
export const smoker: Face = { kind: 'smoker' };
export const station = (id: StationId): Face => ({ kind: 'station', station: id });

export type Posted = { readonly status: number; readonly body: Record<string, unknown> };

/** A kitchen's hub as a person starts it, with its doors and sockets on this machine. */
export async function openKitchen(options: { isOpen?: boolean; isClaiming?: boolean } = {}) {
  const folder = mkdtempSync(join(tmpdir(), 'coalface-who-'));
  const lines: string[] = [];
  const reports: ReportLine[] = [];
  const sockets: Socket[] = [];

  async function start({ isOpen = false, isClaiming = false } = options) {
    lines.length = 0;
    const started = await startHub(
      {
        folder: { kind: 'kitchen', path: folder },
        speed: 1,
        port: 0,
        host: '127.0.0.1',
        isOpen,
        isClaiming,
      },
      { say: (line) => lines.push(line), report: (line) => reports.push(line) },
    );
    if (!started.ok) throw new Error(started.lines.join('\n'));
    return started;
  }
  let running = await start();

  const address = () => must(/http:\S+(?=\/$)/m.exec(lines.join('\n'))?.[0], 'an address');

  async function post(
    door: string,
    asked: unknown = {},
    { token = null as string | null, headers = {} as Record<string, string> } = {},
  ): Promise<Posted> {
    const response = await fetch(`${address()}/api/${door}`, {
      method: 'POST',
      headers: {
        'Content-Type': 'application/json',
        ...(token === null ? {} : { Authorization: `Bearer ${token}` }),
        ...headers,
      },
      body: typeof asked === 'string' ? asked : JSON.stringify(asked),
    });
    return { status: response.status, body: await response.json() };
  }

  function screen(face: Face, token?: string): Socket {
    const auth = {
      protocol: PROTOCOL,
      screenId: 'any',
      face,
      ...(token === undefined ? {} : { token }),
    };
    const socket = io(address(), {
      auth,
      transports: ['websocket'],
      reconnection: false,
      forceNew: true,
    });
    sockets.push(socket);
    return socket;
  }

  const ownersCode = () => /Owner’s code: (\S+)/.exec(lines.join('\n'))?.[1] ?? null;
  return {
    folder,
    lines,
    reports,
    address,
    post,
    screen,
    ownersCode,
    async claim(): Promise<string> {
      const { body } = await post('claim', { code: ownersCode(), name: 'Office' });
      return (body as unknown as LetIn).token;
    },
    /** Lets a screen in as the desk does, and gives what it then keeps. */
    async letIn(token: string, named: object): Promise<LetIn> {
      const asked = (await post('pair')).body as { code: string; secret: string };
      const answer = await post('let-in', { code: asked.code, ...named }, { token });
      if (answer.body['ok'] !== true) throw new Error(JSON.stringify(answer.body));
      const { body } = await post('pair/wait', { secret: asked.secret });
      return body['outcome'] as LetIn;
    },
    async list(token: string): Promise<WhoList> {
      return (await post('who', {}, { token })).body['who'] as WhoList;
    },
    async startAgain(again: { isOpen?: boolean; isClaiming?: boolean } = {}) {
      await running.stop();
      running = await start(again);
    },
    async close() {
      for (const socket of sockets) socket.disconnect();
      await running.stop();
      rmSync(folder, { recursive: true });
    },
  };
}

export type KitchenAtHand = Awaited<ReturnType<typeof openKitchen>>;

/** What a screen is shown first: its face, or why not. */
export const first = (socket: Socket): Promise<'view' | Blank> =>
  new Promise((resolve) => {
    socket.once('view', () => resolve('view'));
    socket.once('blank', resolve);
  });

export const gone = (socket: Socket): Promise<void> =>
  new Promise((resolve) => {
    socket.once('disconnect', () => resolve());
  });

let notes = 0;

export function note(socket: Socket, personId: PersonId | null = null): Promise<Answer> {
  notes += 1;
  const message = {
    kind: 'note',
    id: `who-note-${notes}`,
    personId,
    screenId: null,
    tappedAt: Date.now(),
    text: `note ${notes}`,
    task: null,
  };
  return socket.timeout(5_000).emitWithAck('command', message);
}
