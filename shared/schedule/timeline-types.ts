import type { ActivityId, Seconds } from '../kernel/index.ts';
import type { End, GoalId, Lag, Link, Placement, ResourceId, Schedule } from './model.ts';

/**
 * A published schedule that lives: it is told what happens and says when everything else will be.
 * Times move by themselves; who does what where moves only by `moved`, which a person decides.
 */
export type Timeline = {
  /** The schedule as it now stands: places and links as last decided, times as projected. */
  readonly schedule: Schedule;
  /** The links of that schedule: the same list for as long as they hold. */
  readonly links: readonly Link[];
  readonly nowS: Seconds | null;

  times(activity: ActivityId): Times;
  /** What an end hangs on, now. */
  reason(activity: ActivityId, end: End): Reason;
  goal(goal: GoalId): GoalOutlook;
  /** Of some goals together; needs at least one. */
  inHand(goals: readonly GoalId[]): InHand;
  /** The chain before a goal with the least to spare at each link, first thing first. */
  criticalChain(goal: GoalId): Step[];
  /** Everything that facts have made impossible to keep. */
  broken(): Broken[];

  started(activity: ActivityId, atS: Seconds): Update;
  /**
   * Finished; if its start was never told, it began when it was expected to, or then at the latest.
   */
  finished(activity: ActivityId, atS: Seconds): Update;
  /** Its last tap was a mistake: a finish first, then a start. */
  takenBack(activity: ActivityId): Update;
  /** All the time it is now expected to take; for a wait, the least it now needs. */
  lengthIs(activity: ActivityId, totalS: Seconds): Update;
  /**
   * Something that no schedule knows of holds these: until then they do not start. What is not in
   * it is held no longer.
   */
  held(until: ReadonlyMap<ActivityId, Seconds>): Update;
  /** The clock: what has not started cannot start before, what runs cannot have ended before. */
  notBefore(nowS: Seconds): Update;
  /**
   * Somebody decided that these be done otherwise or elsewhere; the order on what they use is made
   * anew.
   */
  moved(changes: readonly Move[]): Update;
  /**
   * Somebody decided that these be done so and then, and everything in that order: as a `repair`
   * proposed it. What has begun meanwhile stays as it is.
   */
  decided(changes: readonly Placement[], links: readonly Link[]): Update;

  /** The same day, to try something on. */
  fork(): Timeline;
};

/** The part of it that is told what happens. */
export type Told = Pick<
  Timeline,
  'started' | 'finished' | 'takenBack' | 'lengthIs' | 'held' | 'notBefore'
>;

export type Move = Pick<Placement, 'activity' | 'mode' | 'uses'>;

export type Stage = 'waiting' | 'running' | 'done';

export type Times = {
  readonly stage: Stage;
  /** Projected, or the fact once it is one. */
  readonly startS: Seconds;
  readonly endS: Seconds;
  /** So late and every goal and deadline still holds. */
  readonly latestStartS: Seconds;
  readonly latestEndS: Seconds;
  /** How much later it can be; negative if something will be late because of it. */
  readonly slackS: Seconds;
};

/** What a change changed. */
export type Update = {
  /** Activities whose projected or latest times are others now. */
  readonly changed: readonly ActivityId[];
  /** How often an activity's times were worked out, in either direction. */
  readonly touched: number;
  /** How often that made them others: each direction counts for itself. */
  readonly moved: number;
};

/** What a time hangs on, once, with the amount. */
export type Reason =
  | { readonly kind: 'fact' }
  /** As published: nothing moves it. */
  | { readonly kind: 'plan' }
  | { readonly kind: 'now' }
  /** Something outside the schedule holds it. */
  | { readonly kind: 'held' }
  | { readonly kind: 'release' }
  /** Its own start, and the time that it takes. */
  | { readonly kind: 'length'; readonly lengthS: Seconds }
  /**
   * So long after the other end of a lag at least, or, as a maximum asks, so long before at most.
   */
  | { readonly kind: 'lag'; readonly lag: Lag; readonly bound: 'least' | 'most' }
  /** Earlier than published, since the lag or the wait would be too long. */
  | { readonly kind: 'yields'; readonly lag: Lag | null }
  | { readonly kind: 'link'; readonly link: Link }
  /** Put off by so much until this resource is open again, from what is asked otherwise. */
  | {
      readonly kind: 'shift';
      readonly resource: ResourceId;
      readonly offS: Seconds;
      readonly because: Reason;
    };

/** One link of a chain of reasons. */
export type Step = {
  readonly activity: ActivityId;
  readonly end: End;
  readonly atS: Seconds;
  readonly reason: Reason;
  /** How much later what the chain goes on with could be before it moved this. */
  readonly spareS: Seconds;
};

/** What may still slip before goals are late. */
export type InHand = {
  /**
   * By how much what runs or comes next may slip and the goals still hold; below nought, how late
   * the latest of them will be.
   */
  readonly inHandS: Seconds;
  /** Which of these has the least to spare; null once nothing before the goals is left to do. */
  readonly hangsOn: ActivityId | null;
  /** The goal that is late first. */
  readonly goal: GoalId;
};

export type GoalOutlook = InHand & {
  readonly dueS: Seconds;
  /** When it will be, as things stand. */
  readonly atS: Seconds;
};

/** What is not kept, and by how much; `settled` if it has happened and no time can mend it. */
export type Broken =
  | { readonly kind: 'lag'; readonly lag: Lag; readonly byS: Seconds; readonly settled: boolean }
  | {
      readonly kind: 'wait';
      readonly activity: ActivityId;
      readonly bound: 'least' | 'most';
      readonly byS: Seconds;
      readonly settled: boolean;
    }
  | { readonly kind: 'link'; readonly link: Link; readonly byS: Seconds }
  | {
      readonly kind: 'closed';
      readonly activity: ActivityId;
      readonly resource: ResourceId;
      readonly byS: Seconds;
    }
  | { readonly kind: 'deadline'; readonly activity: ActivityId; readonly byS: Seconds };
