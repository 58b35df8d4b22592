import type { ActivityId, Brand, Seconds, Span } from '../kernel/index.ts';

/**
 * The scheduling problem, in the terms of the field: activities with modes, minimum and maximum
 * time lags between any two ends, renewable resources with calendars, resources that hold one state
 * at a time, and due dates with weights. All times are whole seconds from the problem's origin; all
 * spans are half-open.
 */
export type Problem = {
  readonly horizonS: Seconds;
  readonly activities: readonly Activity[];
  readonly lags: readonly Lag[];
  readonly resources: readonly Resource[];
  readonly clashes: readonly Clash[];
  readonly goals: readonly Goal[];
};

export type ResourceId = Brand<string, 'resource'>;
export type GoalId = Brand<string, 'goal'>;

export type Activity = {
  readonly id: ActivityId;
  /** At least one; the engine chooses. The first is the preferred one where all else is equal. */
  readonly modes: readonly Mode[];
  /** Not to start before. */
  readonly releaseS?: Seconds;
  /** Not to end after. */
  readonly deadlineS?: Seconds;
  /** Already decided, by a fact of the day or by a person: the engine works round it. */
  readonly pin?: Pin;
};

/**
 * What a pin leaves out is still the engine's to choose. A pinned time is not held to calendars (a
 * hand may have stayed on), a pinned use not to its need's list; a start and an end together are
 * the length, whatever the mode says.
 */
export type Pin = {
  readonly mode: string;
  readonly startS?: Seconds;
  readonly endS?: Seconds;
  readonly uses?: readonly Use[];
};

export type Mode = {
  readonly id: string;
  readonly length: Length;
  readonly needs: readonly Need[];
  /** What each state resource must be in for as long as the activity lasts. */
  readonly states: readonly StateNeed[];
};

/**
 * `work` takes the time it takes, with a spread; a plan counts on `typicalS`. `wait` may be drawn
 * out between its ends: a plan makes it `aimS` long or longer where there is room for that, and it
 * is then the margin that a late day may use up down to `minS`.
 */
export type Length =
  | {
      readonly kind: 'work';
      readonly typicalS: Seconds;
      readonly lowS: Seconds;
      readonly highS: Seconds;
    }
  | {
      readonly kind: 'wait';
      readonly minS: Seconds;
      readonly maxS: Seconds;
      /** Left out: `minS`, and so no margin. */
      readonly aimS?: Seconds;
    };

/**
 * So much of one of these resources, for the whole activity. Two needs of one mode may fall on one
 * resource if it fits.
 */
export type Need = {
  readonly role: string;
  readonly amount: number;
  /** In order of preference. */
  readonly oneOf: readonly ResourceId[];
};

export type StateNeed = { readonly resource: ResourceId; readonly state: string };

export type Resource = CapacityResource | StateResource;

/** A hand, a table, a rack, a cabinet: capacity 1 makes it a unit with identity. */
export type CapacityResource = {
  readonly kind: 'capacity';
  readonly id: ResourceId;
  readonly capacity: number;
  /**
   * When it can be used, sorted and disjoint; left out: always. An activity fits whole inside one
   * open span.
   */
  readonly open?: readonly Span<Seconds>[];
};

/**
 * A smoker's fire, a table's cleanliness: activities that need the same state may share it, others
 * wait for the change from the state that was needed last.
 */
export type StateResource = {
  readonly kind: 'state';
  readonly id: ResourceId;
  readonly initial?: string;
  /** Seconds from one state to another; what is not listed takes `defaultChangeS`. */
  readonly changes: readonly {
    readonly from: string;
    readonly to: string;
    readonly takesS: Seconds;
  }[];
  readonly defaultChangeS: Seconds;
};

export type End = 'start' | 'end';

/**
 * `to` comes at least `minS` and at most `maxS` after `from`; either may be left out, either may be
 * negative.
 */
export type Lag = {
  readonly from: { readonly activity: ActivityId; readonly end: End };
  readonly to: { readonly activity: ActivityId; readonly end: End };
  readonly minS?: Seconds;
  readonly maxS?: Seconds;
  /** Why, as a word of the trade: `step`, `set`, `quality`, `safety`. Carried into explanations. */
  readonly reason: string;
};

/** Part of an activity's time, counted from its start; `toS` left out means to its end. */
export type Part = { readonly fromS: Seconds; readonly toS?: Seconds };

/**
 * While these parts overlap, `upper` and `lower` may not sit in any of these pairs of places (one
 * drips on the other). A part ends with its activity at the latest.
 */
export type Clash = {
  readonly upper: { readonly activity: ActivityId; readonly part: Part };
  readonly lower: { readonly activity: ActivityId; readonly part: Part };
  readonly places: readonly (readonly [upper: ResourceId, lower: ResourceId])[];
  readonly reason: string;
};

/** An end that a promise hangs on: a service's first portion ready at its opening. */
export type Goal = {
  readonly id: GoalId;
  readonly activity: ActivityId;
  readonly end: End;
  readonly dueS: Seconds;
  readonly weight: number;
};

/** Which resource fills a mode's need number `need`. */
export type Use = { readonly need: number; readonly resource: ResourceId };

export type Placement = {
  readonly activity: ActivityId;
  readonly mode: string;
  readonly startS: Seconds;
  readonly endS: Seconds;
  readonly uses: readonly Use[];
};

/**
 * An order that sharing a resource makes: `to` starts at least `gapS` after `from` ends. With these
 * links kept, any times that keep the lags also keep every resource, so that a change of a length
 * is propagation and not search.
 */
export type Link = {
  readonly from: ActivityId;
  readonly to: ActivityId;
  readonly resource: ResourceId;
  readonly gapS: Seconds;
  /** Counted from the start of `from` instead: a clash may be over long before its activity is. */
  readonly after?: 'start';
  /** Why, where it is not simply that both use the resource: the clash's own reason. */
  readonly reason?: string;
};

export type Schedule = {
  readonly placements: readonly Placement[];
  readonly links: readonly Link[];
};

/**
 * The answer of a planner. A refusal names what cannot be, with amounts, and never half a schedule.
 */
export type Planned =
  | { readonly ok: true; readonly schedule: Schedule }
  | { readonly ok: false; readonly conflicts: readonly Conflict[] };

export type Conflict =
  /** These lags cannot all hold: going round them costs `excessS` more than nothing. */
  | {
      readonly kind: 'lags-contradict';
      readonly activities: readonly ActivityId[];
      readonly excessS: Seconds;
    }
  /** No mode can be filled by what there is, even on an empty day. */
  | {
      readonly kind: 'no-resource';
      readonly activity: ActivityId;
      readonly role: string;
      readonly amount: number;
      readonly most: number;
    }
  /** Each by itself could, together they cannot: the activity finds no room in its window. */
  | {
      readonly kind: 'no-room';
      readonly activity: ActivityId;
      readonly role: string;
      readonly resources: readonly ResourceId[];
      readonly window: Span<Seconds>;
      readonly shortS: Seconds;
      readonly blockedBy: readonly ActivityId[];
    }
  /** The chain before a goal is longer than the time there is. */
  | {
      readonly kind: 'goal-too-early';
      readonly goal: GoalId;
      readonly shortS: Seconds;
      readonly chain: readonly ActivityId[];
    }
  /**
   * The problem itself is not well formed: an unknown id, a negative length, a span turned round.
   */
  | { readonly kind: 'malformed'; readonly where: string; readonly what: string };

/**
 * A planner turns a problem into a schedule. Same problem, seed and attempts, same answer;
 * `attempts` is how hard it tries, and left out as hard as it does by itself. Of a trial it is told
 * what found no room and no more: by how much a goal is short takes many searches to say.
 */
export type Planner = (
  problem: Problem,
  options: { readonly seed: number; readonly attempts?: number; readonly isTrial?: boolean },
) => Planned;
