import type {
  BatchId,
  Celsius,
  CommandId,
  CutId,
  DishId,
  Instant,
  Kilograms,
  PersonId,
  ServiceId,
  SmokerId,
} from '../kernel/index.ts';
import type { CureFact, CureIntent } from './cure-fact.ts';
import type { DoorFact, DoorIntent } from './door.ts';
import type { LotFact, LotIntent, SaidSo } from './lot.ts';
import type { TubFact, TubIntent } from './tub-fact.ts';

/** What happens to a day that nobody planned, and what is counted as it is sold. */
export type Happening =
  | LotFact
  | CureFact
  | TubFact
  | DoorFact
  /** A decision with its reading; `backAt` where somebody has a time for it. */
  | {
      readonly kind: 'smokerWentDown';
      readonly smoker: SmokerId;
      readonly tempC: Celsius;
      readonly backAt: Instant | null;
    }
  /** It burns, but not as hot as it is set: what lies in it takes longer until it is up again. */
  | { readonly kind: 'smokerRunsCold'; readonly smoker: SmokerId; readonly tempC: Celsius }
  | { readonly kind: 'smokerCameUp'; readonly smoker: SmokerId; readonly tempC: Celsius }
  | { readonly kind: 'handWentOut'; readonly hand: PersonId; readonly backAt: Instant | null }
  | { readonly kind: 'handCameIn'; readonly hand: PersonId }
  /** All that came of a cut, against its line of the pull list; a new one replaces the last. */
  | {
      readonly kind: 'deliveryCame';
      readonly cut: CutId;
      readonly pieces: number;
      readonly weightKg: Kilograms;
    }
  /** So many sold in all at this service; a new count replaces the last. */
  | {
      readonly kind: 'portionsSold';
      readonly service: ServiceId;
      readonly dish: DishId;
      readonly sold: number;
    }
  | { readonly kind: 'panEmptied'; readonly batch: BatchId }
  | { readonly kind: 'dishSoldOut'; readonly service: ServiceId; readonly dish: DishId }
  /** So much of a batch is kept for another day. */
  | { readonly kind: 'leftCarriedOver'; readonly batch: BatchId; readonly weightKg: Kilograms }
  /** Signed by who closes. `goesOn` is under way and passes to the next day, `left` never began. */
  | {
      readonly kind: 'dayClosed';
      readonly goesOn: readonly BatchId[];
      readonly left: readonly BatchId[];
    }
  /** As if that command had not been; what it did stays in the log beside this. */
  | { readonly kind: 'undone'; readonly command: CommandId };

/** The same, asked for. */
export type HappeningIntent =
  | LotIntent
  | CureIntent
  | TubIntent
  | DoorIntent
  | {
      readonly kind: 'smokerDown';
      readonly smoker: SmokerId;
      readonly tempC: Celsius;
      readonly backAt: Instant | null;
    }
  | { readonly kind: 'smokerCold'; readonly smoker: SmokerId; readonly tempC: Celsius }
  | { readonly kind: 'smokerUp'; readonly smoker: SmokerId; readonly tempC: Celsius }
  | { readonly kind: 'handOut'; readonly hand: PersonId; readonly backAt: Instant | null }
  | { readonly kind: 'handIn'; readonly hand: PersonId }
  | ({
      readonly kind: 'delivery';
      readonly cut: CutId;
      readonly pieces: number;
      readonly weightKg: Kilograms;
    } & SaidSo)
  | {
      readonly kind: 'sold';
      readonly service: ServiceId;
      readonly dish: DishId;
      readonly sold: number;
    }
  | { readonly kind: 'panEmpty'; readonly batch: BatchId }
  | { readonly kind: 'soldOut'; readonly service: ServiceId; readonly dish: DishId }
  | { readonly kind: 'carryOver'; readonly batch: BatchId; readonly weightKg: Kilograms }
  | { readonly kind: 'closeDay' }
  | { readonly kind: 'undo'; readonly command: CommandId };
