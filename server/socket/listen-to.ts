import type { Socket } from 'socket.io';
import type { z } from 'zod';
import type { Refusal } from '../../shared/day/index.ts';
import { filePath } from '../../shared/kernel/index.ts';
import {
  type Hello,
  type HubToScreen,
  messageSchemas,
  type ScreenLinkListener,
} from '../../shared/protocol/index.ts';
import type { Report } from '../report.ts';
import { createPace } from './pace.ts';

/** What comes in is nothing in particular until it is parsed. */
export type Anything = Record<string, (...args: unknown[]) => void>;
export type ScreenSocket = Socket<Anything, HubToScreen, Record<string, never>, SocketData>;
export type SocketData = { hello: Hello | null };

/** A hand at a list taps some five times a second at the most. */
const TAPS = { perSecond: 5, burst: 20 };
const BEATS = { perSecond: 2, burst: 10 };
/** Whoever is so far ahead of the pace is no hand. */
const WAIT_MAX_MS = 30_000;
/** Messages that make no sense before the socket is closed. */
const STRIKES_MAX = 5;

const schemas = messageSchemas();
const EVENTS = new Set(['command', 'question', 'beat', 'whole']);

type Handled<T> = {
  readonly schema: z.ZodType<T>;
  /** The answer to a message that could not be parsed, if it gets one. */
  readonly onBad?: (refusal: Refusal) => unknown;
  readonly run: (message: T) => unknown;
};

/** Parses what one screen says and hands it to the hub, at a pace and within reason. */
export function listenTo(socket: ScreenSocket, hub: ScreenLinkListener, report: Report): void {
  const screen = { screenId: socket.data.hello?.screenId, address: socket.handshake.address };
  const paces = { taps: createPace(TAPS), beats: createPace(BEATS) };
  const timers = new Set<NodeJS.Timeout>();
  let strikes = 0;

  function strike(what: string) {
    strikes += 1;
    report({ level: 'warning', what, ...screen, strikes });
    if (strikes >= STRIKES_MAX) socket.disconnect(true);
  }

  /** Runs it when its turn comes, in the order of coming. */
  function paced(event: string, run: () => void) {
    const waitMs = (event === 'beat' ? paces.beats : paces.taps).take(performance.now());
    if (waitMs === 0) return run();
    if (waitMs > WAIT_MAX_MS) return strike('a screen speaks too fast');
    const timer = setTimeout(() => {
      timers.delete(timer);
      run();
    }, waitMs);
    timers.add(timer);
  }

  async function handle<T>(event: string, { schema, onBad, run }: Handled<T>, args: unknown[]) {
    const [raw, ack] = args;
    if (typeof ack !== 'function') return strike(`${event} came without a place for its answer`);
    const parsed = schema.safeParse(raw);
    if (!parsed.success) {
      strike(`${event} was not understood`);
      if (onBad) ack(onBad(badMessage(event, parsed.error)));
      return;
    }
    try {
      ack(await run(parsed.data));
    } catch (fault) {
      // No answer: the screen keeps what it asked and asks again.
      report({ level: 'fault', what: `${event} was not answered`, ...screen, fault });
    }
  }

  function on<T>(event: string, handled: Handled<T>) {
    socket.on(event, (...args) => paced(event, () => void handle(event, handled, args)));
  }

  const onBad = (refusal: Refusal) => ({ ok: false, refusal });
  on('command', { schema: schemas.command, onBad, run: hub.command });
  on('question', { schema: schemas.question, onBad, run: hub.question });
  on('beat', { schema: schemas.beat, run: hub.beat });
  socket.on('whole', () => paced('whole', hub.whole));
  socket.onAny((event: string) => {
    if (!EVENTS.has(event)) strike('a screen says what nobody knows');
  });
  socket.on('disconnect', () => {
    for (const timer of timers) clearTimeout(timer);
    hub.gone();
  });
}

function badMessage(event: string, error: z.ZodError): Refusal {
  const issue = error.issues[0];
  const where = filePath([event, ...(issue?.path ?? [])]);
  return { rule: 'bad-message', where, what: issue?.message ?? 'nothing of it makes sense' };
}
