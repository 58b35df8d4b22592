import type { Instant, StationId, TaskId } from '../kernel/index.ts';
import type { Language } from '../words/index.ts';

/**
 * The day as it goes on paper, everything already in words: what a crew needs when every screen is
 * dark. One sheet for each station, and one for what is pulled and mixed.
 */
export type Paper = {
  readonly language: Language;
  readonly kitchen: string;
  /** The day in full: `Wednesday, November 25, 2026`. */
  readonly day: string;
  /** Which plan of the day, and for a day that runs, when it stood so. */
  readonly edition: string;
  /** How each service's promise stands. */
  readonly services: readonly string[];
  readonly stations: readonly StationSheet[];
  /** Null where one station alone is printed. */
  readonly list: ListSheet | null;
};

export type StationSheet = {
  readonly id: StationId;
  readonly name: string;
  /** What lies where, on the sheet of a station that tends the fires. */
  readonly smokers: readonly SmokerBlock[];
  readonly days: readonly DayStretch[];
  /** Work that was done when this was printed, and is not on the sheet. */
  readonly doneCount: number;
};

/** The lines of one local day, in the order of their starts. */
export type DayStretch = { readonly day: string; readonly lines: readonly PaperLine[] };

export type PaperLine = {
  readonly task: TaskId;
  /** What nobody does, a smoke or a set, is on paper so that its time is known. */
  readonly byHand: boolean;
  /** A round that the sheet has told in full before: a thin line is enough. */
  readonly again: boolean;
  readonly running: boolean;
  readonly startAt: Instant;
  readonly from: string;
  readonly to: string;
  /** The doubt of its end, where there is some. */
  readonly between: string | null;
  readonly who: string;
  readonly title: string;
  /** How many and how heavy. */
  readonly amount: string;
  readonly batch: string;
  readonly mind: string | null;
  readonly caution: string | null;
  /** What it waits for, where it goes, what it takes. */
  readonly details: readonly string[];
  /** What the hand or the thermometer must find. */
  readonly doneWhen: string | null;
  /** Pieces to be counted one by one, and how many were. */
  readonly tally: { readonly done: number; readonly pieces: number } | null;
  /** Temperatures to be written, each with its time: what of, how often, in which unit. */
  readonly readings: readonly Blank[];
};

export type Blank = { readonly of: string; readonly times: number; readonly unit: string };

export type SmokerBlock = {
  readonly name: string;
  /** Where the heat comes from. */
  readonly fire: string;
  readonly racks: readonly { readonly name: string; readonly loads: readonly string[] }[];
  readonly air: Blank;
};

export type ListSheet = {
  readonly services: readonly ServiceRow[];
  readonly pull: readonly PullRow[];
  readonly mixes: readonly MixRow[];
  readonly tubs: readonly TubRow[];
};

export type ServiceRow = {
  readonly name: string;
  readonly hours: string;
  readonly dishes: readonly { readonly name: string; readonly portions: string }[];
};

export type PullRow = {
  readonly name: string;
  readonly pieces: string;
  readonly weight: string;
  readonly by: string;
};

export type MixRow = {
  readonly name: string;
  readonly weight: string;
  readonly parts: readonly { readonly ingredient: string; readonly weight: string }[];
  readonly allergens: string | null;
};

export type TubRow = {
  readonly batch: string;
  readonly tubs: readonly {
    readonly name: string;
    readonly weight: string;
    readonly goes: string;
  }[];
};
