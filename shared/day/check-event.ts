import type {
  BatchId,
  Celsius,
  CommandId,
  CoolerId,
  CutId,
  StationId,
  Text,
  ThermometerId,
} from '../kernel/index.ts';
import type { CorrectiveAction } from '../safety/index.ts';
import type { Deed } from './deed.ts';

export type { CorrectiveAction } from '../safety/index.ts';

/** What is looked at, and on what: the limits that a person has to keep with a hand. */
export type CheckOn =
  /** Of what came of a cut. */
  | { readonly kind: 'receiving'; readonly cut: CutId }
  | { readonly kind: BatchCheck; readonly batch: BatchId }
  /** Each stage counts from the beginning of the cooling; the first is 1. */
  | { readonly kind: 'cooling'; readonly batch: BatchId; readonly stage: number }
  | { readonly kind: 'cold-hold'; readonly cooler: CoolerId }
  /** In ice water. */
  | { readonly kind: 'thermometer'; readonly thermometer: ThermometerId }
  /** A raw table by its number; clean ones are alike, and are one. */
  | { readonly kind: 'clean'; readonly station: StationId; readonly table: number | null };

export type BatchCheck =
  | 'end-temperature'
  | 'hot-hold'
  | 'reheat'
  /** Till when it may be kept as it is; then it is thrown out. */
  | 'discard-time'
  /** Out of the cooler, raw. */
  | 'out-of-temperature';

export type CheckKind = CheckOn['kind'];

/**
 * What hand or eye found at the end of a cook, in the words of the catalogue as they then were;
 * null where it has none for that. A person's call: nothing is computed from it.
 */
export type Feel = { readonly is: FeelFound; readonly words: Text | null };

export type FeelFound = 'there' | 'not-yet';

/** What was found and what was done about it; whether it keeps its limit is computed. */
export type CheckFact =
  | {
      readonly kind: 'checkRecorded';
      readonly on: CheckOn;
      /** The lowest read, of what cools the highest; null for what no thermometer shows. */
      readonly tempC: Celsius | null;
      /** Which thermometer; null where the kitchen names none. */
      readonly thermometer: ThermometerId | null;
      /** Absent where nobody was asked, as in logs from before it was. */
      readonly feel?: Feel;
    }
  | {
      readonly kind: 'correctionRecorded';
      readonly on: CheckOn;
      readonly action: CorrectiveAction;
    };

/** The same, asked for. A person has to be named. */
export type CheckIntent =
  | {
      readonly kind: 'check';
      readonly on: CheckOn;
      readonly tempC: Celsius | null;
      readonly thermometer: ThermometerId | null;
      readonly feel?: FeelFound;
    }
  | { readonly kind: 'correct'; readonly on: CheckOn; readonly action: CorrectiveAction };

/** A check or a correction as the day keeps it, in the order it was said. */
export type CheckEntry = Deed & CheckFact & { readonly seq: number; readonly command: CommandId };

/** One name for what is looked at. @example checkKey({ kind: 'cold-hold', cooler }) */
export function checkKey(on: CheckOn): string {
  const { kind } = on;
  if ('batch' in on) return `${kind} ${on.batch}${'stage' in on ? ` ${on.stage}` : ''}`;
  if ('cut' in on) return `${kind} ${on.cut}`;
  if ('cooler' in on) return `${kind} ${on.cooler}`;
  if ('thermometer' in on) return `${kind} ${on.thermometer}`;
  return `${kind} ${on.station} ${on.table ?? ''}`;
}

/** Whether a fact is about what was looked at. */
export const isCheckFact = <F extends { readonly kind: string }>(
  fact: F,
): fact is Extract<F, { readonly kind: CheckFact['kind'] }> =>
  fact.kind === 'checkRecorded' || fact.kind === 'correctionRecorded';
