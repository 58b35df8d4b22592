import type { Instant, Kilograms } from '../kernel/index.ts';
import type { PersonName, SmokerName } from '../plan/index.ts';
import type { CureRefusal } from './cure-fact.ts';
import type { LotRefusal } from './lot.ts';

/** Why what happened could not be kept, or undone, as data. */
export type HappeningRefusal =
  | LotRefusal
  | CureRefusal
  | { readonly rule: 'smoker-is-down'; readonly smoker: SmokerName; readonly since: Instant }
  | { readonly rule: 'smoker-is-up'; readonly smoker: SmokerName }
  | { readonly rule: 'hand-is-out'; readonly person: PersonName }
  | { readonly rule: 'hand-is-here'; readonly person: PersonName }
  | { readonly rule: 'back-too-soon' }
  /** A cut, a dish, a service or a batch that this day does not have. */
  | { readonly rule: 'not-of-this-day' }
  /** Pieces, portions, seconds; of a weight the kilograms, said in the kitchen's own unit. */
  | { readonly rule: 'impossible-amount'; readonly amount: number }
  | { readonly rule: 'impossible-amount'; readonly weightKg: Kilograms }
  | { readonly rule: 'day-is-closed'; readonly at: Instant; readonly by: PersonName | null }
  | { readonly rule: 'nothing-to-undo' }
  /** Starts, finishes and counts are taken back on their own line. */
  | { readonly rule: 'undone-on-its-line' }
  /** It would pull the ground from under something that was done since. */
  | { readonly rule: 'stood-on'; readonly at: Instant; readonly by: PersonName | null };
