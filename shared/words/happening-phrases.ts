import type { HappeningRefusal } from '../day/index.ts';

/** What a refusal names, already in the reader's language and clock. */
export type Named = {
  readonly smoker: string;
  readonly person: string;
  readonly time: string;
  readonly amount: string;
  readonly lot: string;
  readonly cut: string;
  readonly day: string;
  readonly mix: string;
  readonly weight: string;
  /** The row that was broken, with both amounts. */
  readonly row: string;
  /** What is odd, and what to do; nothing on a screen at which nothing comes. */
  readonly odd: string;
};

/** Why what happened could not be kept or undone, in one language. */
export type HappeningPhrases = {
  readonly [Key in HappeningRefusal['rule']]: (named: Named) => string;
};
