import type { CommandId, PersonId, ScreenId } from '../../shared/kernel/index.ts';
import type { Answer, OpenLink } from '../../shared/protocol/index.ts';
import type { Face } from '../../shared/view/index.ts';
import type { LastView } from './last-view.ts';
import type { Outbox } from './outbox.ts';

/**
 * Everything that a screen's sync needs from outside. It touches no global: a test brings its own
 * clock and link.
 */
export type SyncPorts = {
  readonly openLink: OpenLink;
  readonly outbox: Outbox;
  /** Left out: a screen that starts without a hub shows nothing. */
  readonly lastView?: LastView;
  readonly clock: LocalClock;
  readonly timers: Timers;
  readonly drainer: Drainer;
  /** A fresh id for each command, never used before by anyone. */
  readonly newId: () => string;
  readonly screenId: ScreenId;
  /** What the hub gave this screen when it was let in. */
  readonly token?: string;
  readonly face: Face;
  /** Whose screen this is, where it is one person's own; a wall is nobody's. */
  readonly personId?: PersonId;
  /** Calls back when the device woke or its network returned; gives the way to stop. */
  readonly onWake?: (woke: () => void) => () => void;
};

/** The device's own clocks. */
export type LocalClock = {
  /** Milliseconds that never run backwards; their origin means nothing. */
  monotonicMs(): number;
  /** What the device takes for UTC milliseconds; often wrong. */
  wallMs(): number;
};

export type Timers = {
  /** Runs once after so many milliseconds; gives the way to call it off. */
  after(delayMs: number, run: () => void): () => void;
};

/**
 * The tabs of one device share one outbox. One of them, the drainer, sends; it tells the others
 * what became of a tap.
 */
export type Drainer = {
  /** Whether this one is to send now. */
  readonly isMine: boolean;
  listen(listener: DrainerListener): void;
  tell(news: OutboxNews): void;
  close(): void;
};

export type DrainerListener = {
  /** This one is to send from now on. */
  mine(): void;
  news(news: OutboxNews): void;
};

export type OutboxNews =
  | { readonly kind: 'added' }
  | { readonly kind: 'settled'; readonly id: CommandId; readonly answer: Answer }
  | { readonly kind: 'seen'; readonly id: CommandId };

/** Where nobody shares the outbox, as in a test. */
export const soleDrainer = (): Drainer => ({
  isMine: true,
  listen() {},
  tell() {},
  close() {},
});
