import type { Celsius, Instant, Kilograms, Seconds } from '../kernel/index.ts';
import type { LimitRow, PersonName, SlotName, TaskName } from '../plan/index.ts';
import type { CheckRefusal } from './check-refusal.ts';
import type { HappeningRefusal } from './happening-refusal.ts';
import type { WhoRefusal } from './who-refusal.ts';

/** Who was there first: by name, or else by the name of the screen that it was tapped on. */
export type DoneBefore = {
  readonly at: Instant;
  readonly by: PersonName | null;
  readonly on?: string;
};

/** Why a command was not taken, as data; `shared/words` makes the sentence. */
export type Refusal =
  | WhoRefusal
  | HappeningRefusal
  | CheckRefusal
  | { readonly rule: 'no-plan' }
  /** So many taps were made on another day than the hub has, or on one of another log. */
  | { readonly rule: 'another-day'; readonly taps: number }
  | { readonly rule: 'unknown-task' }
  | ({ readonly rule: 'already-started' } & DoneBefore)
  | ({ readonly rule: 'already-done' } & DoneBefore)
  | { readonly rule: 'not-started' }
  /** Only hands are tapped; smoke, set and rest begin and end by what hands do. */
  | { readonly rule: 'not-by-hand'; readonly task: TaskName }
  | { readonly rule: 'waits-for'; readonly before: TaskName }
  /** What follows has already begun, so this cannot be taken back. */
  | { readonly rule: 'already-followed'; readonly by: TaskName }
  | { readonly rule: 'count-out-of-range'; readonly done: number; readonly pieces: number }
  | { readonly rule: 'late-out-of-range'; readonly byS: Seconds; readonly mostS: Seconds }
  | { readonly rule: 'not-this-screens' }
  | { readonly rule: 'unknown-person' }
  | { readonly rule: 'lacks-skill'; readonly person: PersonName; readonly task: TaskName }
  | { readonly rule: 'impossible-temperature'; readonly tempC: Celsius }
  | { readonly rule: 'unknown-place' }
  | {
      readonly rule: 'slot-too-small';
      readonly slot: SlotName;
      readonly needCm2: number;
      readonly freeCm2: number;
    }
  | {
      readonly rule: 'slot-taken';
      readonly slot: SlotName;
      readonly by: TaskName;
      readonly until: Instant;
    }
  | {
      readonly rule: 'fire-differs';
      readonly slot: SlotName;
      readonly needC: Celsius;
      readonly isC: Celsius;
    }
  /** It is too small or too weak for it, or never so hot. */
  | { readonly rule: 'rack-unfit'; readonly slot: SlotName }
  | {
      readonly rule: 'rack-too-weak';
      readonly slot: SlotName;
      readonly needKg: Kilograms;
      readonly freeKg: Kilograms;
    }
  /** One would drip on the other, which a row of the limits forbids. */
  | {
      readonly rule: 'drips';
      readonly slot: SlotName;
      readonly other: TaskName;
      readonly row: LimitRow;
    }
  | { readonly rule: 'off-already' }
  | { readonly rule: 'in-already'; readonly at: Instant }
  /** So much at most, since it then comes after something; 0 where it cannot be earlier at all. */
  | {
      readonly rule: 'not-so-early';
      readonly mostS: Seconds;
      readonly before: TaskName | null;
    }
  /** Of what is not in the fire, or has not been read, or whose cut is not known so well. */
  | { readonly rule: 'nothing-foreseen' }
  /** The plan changed between the question and the taking. */
  | { readonly rule: 'out-of-date' }
  | { readonly rule: 'nothing-moves' }
  | { readonly rule: 'read-only'; readonly atSeq: number }
  /** The hub failed at it; whoever looks after the hub finds why in its report. */
  | { readonly rule: 'hub-fault' }
  | { readonly rule: 'bad-message'; readonly where: string; readonly what: string };
