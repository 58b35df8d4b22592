import type {
  Celsius,
  CommandId,
  DayId,
  Instant,
  PersonId,
  ScreenId,
  Seconds,
  SlotId,
  SmokerId,
  TaskId,
} from '../kernel/index.ts';
import type { AdoptedForecast } from './adopted-forecast.ts';
import type { AdoptedPlan } from './adopted-plan.ts';
import type { CheckFact } from './check-event.ts';
import type { Happening } from './happening.ts';
import type { LimitsFact } from './limits-fact.ts';
import type { MendFact } from './mend-fact.ts';
import type { WhoFact } from './who.ts';

/** The shape of events that this program writes. */
export const EVENT_VERSION = 1;

/** What happened, in the order it was kept. `Event` is a fact: stored bytes never change. */
export type Event = EventHead & Fact;

export type EventHead = {
  readonly seq: number;
  /** Of its shape; older ones are lifted when read. */
  readonly version: typeof EVENT_VERSION;
  /** Null for what was done before there was a day: letting the first screens in. */
  readonly day: DayId | null;
  /** When it happened: when the finger came down, also where the screen was alone then. */
  readonly at: Instant;
  /** When the hub kept it; never before that of an earlier event. */
  readonly keptAt: Instant;
  /** The command it answers. */
  readonly commandId: CommandId;
  /**
   * Who did it, on which screen. What the screen may do was decided before and is not stored here.
   */
  readonly personId: PersonId | null;
  readonly screenId: ScreenId | null;
};

export type Fact = WhoFact | DayFact;

export type DayFact = TaskFact | Happening | ForecastFact | CheckFact | MendFact | LimitsFact;

/** What is foreseen of a load in the fire, where it moves a time; it replaces what was before. */
export type ForecastFact = {
  readonly kind: 'forecastAdopted';
  readonly forecast: AdoptedForecast;
};

export type TaskFact =
  /**
   * Everything that is not a function of the log: the plan, what it was made from, and the schedule
   * taken.
   */
  | {
      readonly kind: 'planAdopted';
      readonly plan: AdoptedPlan;
      /** The version that it takes back: this one is as the plan before that was. */
      readonly takesBack?: number;
    }
  /** `hand` is who does the work, who need not be who tapped. */
  | { readonly kind: 'taskStarted'; readonly task: TaskId; readonly hand: PersonId | null }
  | { readonly kind: 'taskFinished'; readonly task: TaskId }
  | { readonly kind: 'startTakenBack'; readonly task: TaskId }
  | { readonly kind: 'finishTakenBack'; readonly task: TaskId }
  /** So many pieces done in all; a new count replaces the last. */
  | { readonly kind: 'piecesCounted'; readonly task: TaskId; readonly done: number }
  /** The hand says: so much longer than now expected. */
  | { readonly kind: 'taskRunsLate'; readonly task: TaskId; readonly byS: Seconds }
  | { readonly kind: 'helpAsked'; readonly task: TaskId }
  | { readonly kind: 'helpCame'; readonly task: TaskId }
  | { readonly kind: 'taskGiven'; readonly task: TaskId; readonly hand: PersonId }
  | { readonly kind: 'temperatureRead'; readonly where: ReadingPlace; readonly tempC: Celsius }
  /** One decision of a person, however many batches it moves. */
  | { readonly kind: 'slotsMoved'; readonly moves: readonly SlotMove[] }
  | { readonly kind: 'noteWritten'; readonly text: string; readonly task: TaskId | null };

/** Air in a smoker, or the core of a batch in its slot. */
export type ReadingPlace =
  | { readonly kind: 'air'; readonly smoker: SmokerId }
  | { readonly kind: 'core'; readonly stay: TaskId };

/**
 * The load of `stay` (a task whose work is `place`) that fills need number `need` goes to another
 * slot.
 */
export type SlotMove = {
  readonly stay: TaskId;
  readonly need: number;
  readonly to: SlotId;
};
