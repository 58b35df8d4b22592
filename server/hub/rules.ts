import type { Command, Decision, Event, Fact, Refusal } from '../../shared/day/index.ts';
import type { DayId, Instant, PersonId, ScreenId } from '../../shared/kernel/index.ts';
import type { Hello, Question, QuestionAnswer } from '../../shared/protocol/index.ts';
import type { Face, View } from '../../shared/view/index.ts';

/**
 * What the hub must be told about a day to keep one. The hub itself knows only that a day is a list
 * of events: who may write next, what is durable, who has to be told.
 */
export type DayRules<State> = {
  empty(): State;
  /** Total and pure. */
  fold(state: State, event: Event): State;
  /** `running` has taken every event that is kept, but not those that a draft would make. */
  decide(state: State, command: Command, now: Instant, running: RunningDay<State>): Decision;
  /** Why this screen may not show what it wants to, or null. Cheap: looked at after every event. */
  mayShow(state: State, asker: Asker): Refusal | null;
  /** Where a screen was put up, to be compared with itself; null for one that nobody put up. */
  placeOf(state: State, screen: ScreenId): unknown;
  /**
   * Why this screen may not ask for this, or null. It may hang on more than the day: on who has
   * just proved to be there.
   */
  mayAsk(state: State, asker: Asker, command: Command): Refusal | null;
  /** Who is known to be at a screen: they did what is asked there and names nobody. */
  personAt(screen: ScreenId): PersonId | null;
  /** When the thing a command is about last changed: it cannot have been tapped before. */
  changedAt(state: State, command: Command): Instant;
  /** The working day a fact belongs to; null before there is one. */
  dayOf(state: State, fact: Fact): DayId | null;
  /** The working day that runs; null before there is one. */
  today(state: State): DayId | null;
  run(state: State, now: Instant): RunningDay<State>;
};

/** A screen as its link knows it. */
export type Asker = Pick<Hello, 'screenId' | 'face'>;

/** An event that is in the log, and the day as folded up to it. */
export type Kept<State> = { readonly event: Event; readonly state: State };

/** A day with its expected times, moving with the clock and with every event. */
export type RunningDay<State> = {
  apply(kept: Kept<State>): void;
  /** Moves to `now`; true when a time that a screen shows has changed. */
  tick(now: Instant): boolean;
  show(face: Face, now: Instant): Shown;
  ifMoved(question: Question, now: Instant): QuestionAnswer;
};

export type Shown =
  | { readonly ok: true; readonly view: View }
  | { readonly ok: false; readonly refusal: Refusal };
