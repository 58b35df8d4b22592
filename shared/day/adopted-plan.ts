import type { Catalogue } from '../catalogue/index.ts';
import type { Kitchen } from '../kitchen/index.ts';
import type { BuiltDay, CookPlan, Pace } from '../plan/index.ts';
import type { LimitsChange, Profile } from '../safety/index.ts';
import type { Schedule } from '../schedule/index.ts';

/**
 * A plan with all that it was made from, kept whole so that a replay needs no solver and no old
 * version of the builder. Hashes are over the canonical JSON of each document, in hexadecimal
 * SHA-256.
 */
export type AdoptedPlan = {
  /** 1 for the first plan of a day; each edit of a running day makes the next. */
  readonly version: number;
  readonly engine: string;
  readonly seed: number;
  readonly hashes: {
    readonly cookPlan: string;
    readonly kitchen: string;
    readonly catalogue: string;
    /** Where the kitchen has changed its limits. */
    readonly limits?: string;
  };
  readonly cookPlan: CookPlan;
  readonly kitchen: Kitchen;
  readonly catalogue: Catalogue;
  /**
   * The limits that it was held to, whole: the day keeps to them whatever becomes of the profile.
   * Plans of the first logs carry their name alone.
   */
  readonly limits?: Profile;
  /** By which changes they came to be so; left out where by none. */
  readonly limitChanges?: readonly LimitsChange[];
  /** How fast hands had been on the days before, where that is known; its lengths go by it. */
  readonly paces?: readonly Pace[];
  readonly built: BuiltDay;
  readonly schedule: Schedule;
};
