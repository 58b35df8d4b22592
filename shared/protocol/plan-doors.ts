import type { CommandId, Instant, Kilograms, LocalDay } from '../kernel/index.ts';
import type { CookPlan } from '../plan/index.ts';
import type { MendOffer, Refusal, Text } from '../view/index.ts';

export type { CookPlan, PlanEdit, PlannedBatch, PlannedDish } from '../plan/index.ts';

/** What a plan can be made of. */
export type PlanMenu = {
  readonly dishes: readonly MenuDish[];
  readonly people: readonly { readonly id: string; readonly name: string }[];
  readonly slots: readonly { readonly id: string; readonly smoker: Text; readonly rack: number }[];
};

export type MenuDish = {
  readonly id: string;
  readonly name: Text;
  readonly choices: readonly {
    readonly id: string;
    readonly name: Text;
    readonly usual: string;
    readonly options: readonly {
      readonly id: string;
      readonly name: Text;
      /** Why one would. */
      readonly reason: Text;
    }[];
  }[];
  readonly steps: readonly { readonly id: string; readonly title: Text }[];
};

/** The plan of a day, and what it can be made of. */
export type PlanShown = {
  readonly plan: CookPlan | null;
  readonly menu: PlanMenu;
  /** Days that have a plan. */
  readonly days: readonly string[];
  /** The day that runs; null before there is one. */
  readonly runs: string | null;
  readonly canUndo: boolean;
  /** Kept by days before it, and still good on it. */
  readonly kept: readonly KeptShown[];
  /** Of the running day: the batches as they are made. */
  readonly batches: readonly BatchShown[];
};

export type KeptShown = {
  readonly dish: Text;
  readonly madeOn: string;
  readonly portions: number;
  readonly weightKg: Kilograms;
  readonly at: Instant;
  /** The last day on which it may be used; null where the limits set none. */
  readonly lastDay: LocalDay | null;
  /** It may not be used yet: its cooling goes on, or was not kept and nobody has put it right. */
  readonly isCooling: boolean;
};

export type BatchShown = {
  readonly service: string;
  readonly dish: string;
  readonly number: number;
  readonly portions: number;
  /** Wall time, counted on from midnight of the plan's day. */
  readonly ready: string;
};

/** What came of trying a plan, in sentences. `stale`: a later one was tried in its place. */
export type PlanTried = {
  readonly fits: boolean;
  readonly stale?: boolean;
  readonly taken?: boolean;
  readonly lines: readonly string[];
  /** Where a better plan was looked for: how far it came, and in how many steps. */
  readonly better?: { readonly line: string; readonly isBest: boolean; readonly steps: number };
};

/** The few things of a plan that cannot all be: what is said of them, each, and what to do. */
export type PlanConflict = {
  readonly conflict: {
    readonly cannot: string;
    readonly demands: readonly string[];
    readonly advice: string;
  } | null;
};

/** The plan with as many portions as were found to fit, and the sentence; null where none was. */
export type PlanNearest = {
  readonly nearest: { readonly line: string; readonly plan: CookPlan } | null;
};

/**
 * What would mend the day that runs. `id` takes it; null where there is nothing to take. Null
 * altogether where no day runs.
 */
export type MendShown = {
  readonly mend: { readonly id: string | null; readonly offer: MendOffer } | null;
};

/** That it was taken, and by which command: that takes it back. */
export type MendTaken = { readonly command: CommandId };

export type PlanAnswer<Found> =
  | ({ readonly ok: true } & Found)
  | { readonly ok: false; readonly refusal: Refusal };
