import type {
  BatchId,
  Celsius,
  CutId,
  Instant,
  Kilograms,
  LocalDay,
  LotId,
  Text,
} from '../kernel/index.ts';
import type { Deed } from './deed.ts';
import type { Odd } from './odd-delivery.ts';

/** What was written down of a lot as it came. */
export type Received = {
  readonly cut: CutId;
  readonly pieces: number;
  readonly weightKg: Kilograms;
  readonly supplier: string;
  /** Of its warmest piece; null where nobody put a thermometer to it. */
  readonly tempC: Celsius | null;
  /** The last day on which it may be used; null where it names none. */
  readonly useBy: LocalDay | null;
  /** By which its supplier knows it; null where the case bears none. */
  readonly code: string | null;
};

/** A lot of the cooler: what came, and what the days before have left of it. */
export type Lot = Deed & Received & { readonly id: LotId; readonly leftPieces: number };

export type LotFact =
  | ({ readonly kind: 'lotCame'; readonly lot: LotId } & Received)
  /** In place of what was said of it before. The first lot is used up before the next. */
  | { readonly kind: 'batchCutFrom'; readonly batch: BatchId; readonly lots: readonly LotId[] };

/** Somebody was asked about all that is odd of what came, and says that it is so. */
export type SaidSo = { readonly isSo?: true | undefined };

/** The same, asked for. */
export type LotIntent =
  | ({ readonly kind: 'receive' } & Received & SaidSo)
  | { readonly kind: 'cutFrom'; readonly batch: BatchId; readonly lots: readonly LotId[] };

/** Why a lot cannot have come so, or not have gone into that batch, as data. */
export type LotRefusal =
  | { readonly rule: 'past-use-by'; readonly useBy: LocalDay }
  /** Nobody has said yet that it is so. */
  | { readonly rule: 'odd-delivery'; readonly cut: Text; readonly odd: readonly Odd[] }
  | { readonly rule: 'unknown-lot'; readonly lot: string }
  | { readonly rule: 'lot-not-here-yet'; readonly lot: LotId; readonly at: Instant }
  | { readonly rule: 'lot-of-another-cut'; readonly lot: LotId; readonly cut: Text }
  | { readonly rule: 'lot-used-up'; readonly lot: LotId }
  | { readonly rule: 'lot-sent-back'; readonly lot: LotId }
  /** Asked of the record: no day knows it. */
  | { readonly rule: 'not-on-record' };
