import type { Command, Refusal } from '../day/index.ts';
import type { Instant, ScreenId, SlotId, TaskId } from '../kernel/index.ts';
import type { AlertNotice, AlertRate, Face, MoveOffer, View } from '../view/index.ts';

/**
 * Raised when hub and screen no longer understand each other; an older screen loads itself anew
 * between taps.
 */
export const PROTOCOL = 3;

/** Sent as the socket's handshake. `epoch` and `seq` are the last the screen has seen, if any. */
export type Hello = {
  readonly protocol: number;
  readonly screenId: ScreenId;
  readonly face: Face;
  /** What the hub gave it when it was let in. */
  readonly token?: string | undefined;
  readonly epoch?: string | undefined;
  readonly seq?: number | undefined;
  /** Put up to sound when somebody is called; silent where it is left out. */
  readonly sounds?: boolean | undefined;
};

/**
 * Which day it is, and in which log: another log may hold the same tasks. A log goes by the hash of
 * its first entry; nothing, before it has one.
 */
export type OfDay = { readonly log: string; readonly day: string | null };

/**
 * The whole view after a change. A screen keeps the newest (epoch, seq) and drops what is older.
 */
export type ViewMessage = {
  /** Made anew each time the hub opens its log. */
  readonly epoch: string;
  readonly seq: number;
  readonly of?: OfDay | undefined;
  readonly view: View;
};

/** `of`: the day that the screen showed when it was tapped. */
export type CommandMessage = Command & { readonly of?: OfDay | undefined };

/**
 * The hub's word on a command, the same however often it is asked. `seq` is the last event it made.
 */
export type Answer =
  | { readonly ok: true; readonly seq: number }
  | { readonly ok: false; readonly refusal: Refusal };

/** A question changes nothing. */
export type Question = {
  readonly kind: 'ifMoved';
  readonly stay: TaskId;
  readonly need: number;
  readonly to: SlotId;
};
export type QuestionAnswer =
  | { readonly ok: true; readonly offer: MoveOffer }
  | { readonly ok: false; readonly refusal: Refusal };

/** Clock comparison after RFC 5905: sent at t0, received by the hub at t1, answered at t2. */
export type Beat = { readonly t0: number };
export type BeatAnswer = {
  readonly t1: Instant;
  readonly t2: Instant;
  /** The hub's last event: a screen whose view is older asks for the whole. */
  readonly seq?: number | undefined;
  /**
   * How many times faster than real time the hub's clock runs; a demo's may, and 1 is meant where
   * it is left out.
   */
  readonly speed?: number | undefined;
};

/** Why a log does not hold any further. `newer`: written by a later version of the program. */
export type LogBreak = 'altered' | 'missing' | 'unreadable' | 'newer';

/**
 * What is shown is true up to `atSeq`, and nothing more is kept. `taken`: another hub has the
 * kitchen now.
 */
export type ReadOnly = { readonly atSeq: number; readonly why: LogBreak | 'taken' };

/** There is nothing for this face to show, and why. A view follows as soon as there is. */
export type Blank = {
  readonly epoch: string;
  readonly seq: number;
  readonly of?: OfDay | undefined;
  readonly refusal: Refusal;
};

/**
 * Who is wanted for what. Told to a desk and to what is put up to sound: when it comes, and as soon
 * as any of this changes.
 */
export type Wanted = {
  readonly notices: readonly AlertNotice[];
  readonly rates: readonly AlertRate[];
  /** When somebody was called last; null where nobody was. */
  readonly calledAt: Instant | null;
  /** Whether calls are to be heard from this screen: one at a time. */
  readonly isHeard: boolean;
};

export type ScreenToHub = {
  command: (message: CommandMessage, ack: (answer: Answer) => void) => void;
  question: (message: Question, ack: (answer: QuestionAnswer) => void) => void;
  beat: (message: Beat, ack: (answer: BeatAnswer) => void) => void;
  /** The screen missed something: send the whole view again. */
  whole: () => void;
};

export type HubToScreen = {
  view: (message: ViewMessage) => void;
  blank: (message: Blank) => void;
  /** The hub speaks another version; the screen loads itself anew when no tap is under way. */
  reload: (message: { readonly protocol: number }) => void;
  readOnly: (message: ReadOnly) => void;
  wanted: (message: Wanted) => void;
};
