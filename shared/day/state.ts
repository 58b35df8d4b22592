import type { Outcome } from '../cook/index.ts';
import type {
  Celsius,
  DayId,
  Instant,
  PersonId,
  Seconds,
  SlotId,
  TaskId,
} from '../kernel/index.ts';
import { instant } from '../kernel/index.ts';
import type { Kitchen } from '../kitchen/index.ts';
import type { CookPlan, HandTimes } from '../plan/index.ts';
import type { HeldTo } from '../safety/index.ts';
import type { Placement } from '../schedule/index.ts';
import type { AdoptedForecast } from './adopted-forecast.ts';
import type { AdoptedPlan } from './adopted-plan.ts';
import type { CheckEntry } from './check-event.ts';
import type { Deed } from './deed.ts';
import type { Event, ReadingPlace } from './event.ts';
import { type Happened, type KeptFood, nothingHappened } from './happened.ts';
import type { Leftover } from './leftover.ts';
import type { Told } from './story.ts';
import { nobody, type WhoState } from './who.ts';

/**
 * The day as its events tell it: facts only. What is expected is computed from these, never kept.
 */
export type DayState = {
  /** The last event folded in; 0 before the first. */
  readonly seq: number;
  readonly day: DayId | null;
  readonly plan: AdoptedPlan | null;
  /** The plans of this day that were changed into others, the last one last: to go back to. */
  readonly replaced: readonly CookPlan[];
  /** The kitchens that this day's plans were made for and no longer are, to name what is gone. */
  readonly kitchens: readonly Kitchen[];
  /** What the days before kept for others; how long it is good the limits say. */
  readonly kept: readonly KeptFood[];
  /** What they kept and what is still to be looked at of it: it was cooling when they ended. */
  readonly leftovers: readonly Leftover[];
  /** What the last day was held to, where nothing else of it is known. */
  readonly heldBefore: HeldTo | null;
  /** When the hub kept it. */
  readonly keptAt: Instant;
  /**
   * The last event that changed who does what or what sits where; an offer made before it is out of
   * date.
   */
  readonly arrangedSeq: number;
  /** Tasks that anything happened to. */
  readonly tasks: ReadonlyMap<TaskId, TaskFacts>;
  /** Slots that a person gave to a load, by `loadKey`; the others are as the schedule has them. */
  readonly slots: ReadonlyMap<LoadKey, SlotId>;
  /**
   * Who does what where, of what a repair decided since the plan; what a person gave or moved
   * after that stands over it.
   */
  readonly arranged: ReadonlyMap<TaskId, Pick<Placement, 'mode' | 'uses'>>;
  readonly readings: readonly Reading[];
  readonly notes: readonly Note[];
  /** What was looked at, and what was done about it. */
  readonly checks: readonly CheckEntry[];
  /** What was foreseen of each load, the last of it standing. */
  readonly forecasts: ReadonlyMap<TaskId, readonly AdoptedForecast[]>;
  /** How forecasts of earlier days came out here. */
  readonly record: readonly Outcome[];
  /** How long hands took on earlier days. */
  readonly handTimes: readonly HandTimes[];
  /** What happened to it besides: smokers, hands, deliveries, what was sold. */
  readonly happened: Happened;
  /**
   * All that has happened on this day, in the order it was kept; computed from it is when
   * food was kept, and nothing else.
   */
  readonly story: readonly Told[];
  /** Who belongs to the hub, on this day as on every other. */
  readonly who: WhoState;
  /**
   * The day as the running plan found it, and what has happened since: the order that a move makes
   * among what it touches hangs on the times that were expected then, so that a live day is opened
   * by going through it again.
   */
  readonly atPlan: DayState | null;
  readonly sincePlan: readonly Event[];
};

export type TaskFacts = {
  readonly started: Deed | null;
  readonly finished: Deed | null;
  /** Pieces done, of all. */
  readonly counted: { readonly done: number; readonly at: Instant } | null;
  /** All that the hand said it would take longer. */
  readonly lateByS: Seconds;
  readonly helpAskedAt: Instant | null;
  /** Whom it was given to, or who started it; null while the schedule's hand stands. */
  readonly hand: PersonId | null;
};

export type Reading = Deed & { readonly where: ReadingPlace; readonly tempC: Celsius };

export type Note = Deed & { readonly text: string; readonly task: TaskId | null };

export type LoadKey = `${string}#${number}`;

/**
 * The load that fills need number `need` of a stay. @example loadKey('ribs-1/stay', 0) //=>
 * 'ribs-1/stay#0'
 */
export const loadKey = (stay: TaskId, need: number): LoadKey => `${stay}#${need}`;

/** The day before anything happened. */
export function emptyDay(): DayState {
  return {
    seq: 0,
    day: null,
    plan: null,
    replaced: [],
    kitchens: [],
    kept: [],
    leftovers: [],
    heldBefore: null,
    keptAt: instant(0),
    arrangedSeq: 0,
    tasks: new Map(),
    slots: new Map(),
    arranged: new Map(),
    readings: [],
    notes: [],
    checks: [],
    forecasts: new Map(),
    record: [],
    handTimes: [],
    happened: nothingHappened,
    story: [],
    who: nobody,
    atPlan: null,
    sincePlan: [],
  };
}

const untouched: TaskFacts = {
  started: null,
  finished: null,
  counted: null,
  lateByS: 0 as Seconds,
  helpAskedAt: null,
  hand: null,
};

/** What happened to a task so far; all null where nothing did. */
export function factsOf(state: DayState, task: TaskId): TaskFacts {
  return state.tasks.get(task) ?? untouched;
}
