import type { LabelFacts } from '../day/index.ts';
import type {
  BatchId,
  Celsius,
  CutId,
  DayId,
  DishId,
  Instant,
  Kilograms,
  LocalDay,
  LotId,
  ServiceId,
  Text,
} from '../kernel/index.ts';
import type { Kitchen } from '../kitchen/index.ts';

/** The shape of records that this program writes. */
export const RECORD_VERSION = 1;

/**
 * What a day leaves behind once it is over: what came, what became of it, and where it went. A
 * function of its events; weights are those of the lots as they came, on the yields of the plan.
 */
export type DayRecord = {
  readonly version: typeof RECORD_VERSION;
  readonly day: DayId;
  readonly zone: string;
  readonly kitchen: string;
  /** How it has things said. */
  readonly languages: Kitchen['languages'];
  readonly units: Kitchen['units'];
  /** The profile of limits that the day was held to; version 0 where only its name is known. */
  readonly limits: { readonly id: string; readonly version: number };
  readonly planVersion: number;
  readonly hashes: {
    readonly cookPlan: string;
    readonly kitchen: string;
    readonly catalogue: string;
  };
  readonly closed: Signed | null;
  /** Lots that came on this day. */
  readonly lots: readonly LotRow[];
  /** What is left of each lot at the end of it. */
  readonly left: readonly { readonly lot: LotId; readonly weightKg: Kilograms }[];
  readonly services: readonly ServiceRow[];
  readonly flows: readonly BatchFlow[];
};

/** When, and by whom where anybody is known. */
export type Signed = { readonly at: Instant; readonly by: string | null };

export type LotRow = Signed & {
  readonly id: LotId;
  readonly cut: CutId;
  readonly name: Text;
  readonly pieces: number;
  readonly weightKg: Kilograms;
  readonly supplier: string;
  readonly tempC: Celsius | null;
  readonly useBy: LocalDay | null;
  readonly code: string | null;
  /** Of the cut as it comes; left out where it has none. */
  readonly allergens?: readonly string[];
  /** It went back to whom it came from; left out where it did not. */
  readonly isSentBack?: true;
};

export type ServiceRow = {
  readonly id: ServiceId;
  readonly name: Text;
  readonly opensAt: Instant;
  readonly closesAt: Instant;
  readonly dishes: readonly {
    readonly dish: DishId;
    readonly name: Text;
    readonly sold: number;
  }[];
};

/** Where the weight of a batch that was begun came from, and where it went: both sums are equal. */
export type BatchFlow = {
  readonly batch: BatchId;
  readonly name: Text;
  readonly dish: DishId;
  readonly dishName: Text;
  readonly service: ServiceId;
  readonly begunAt: Instant;
  readonly from: readonly Source[];
  readonly inKg: Kilograms;
  readonly tubs: readonly TubFlow[];
  /** What trimming, cooking and carving take besides. */
  readonly lossKg: {
    readonly trim: Kilograms;
    readonly cook: Kilograms;
    readonly carve: Kilograms;
  };
  /** For its service. */
  readonly servedKg: Kilograms;
  /** For another day. */
  readonly keptKg: Kilograms;
  /** Whether somebody said that what was left of it was thrown out. */
  readonly isThrownOut: boolean;
  /** How much that was; left out of the days that the first versions of this program sealed. */
  readonly thrownKg?: Kilograms;
  /** That nobody counted what was sold of it before; left out where it was counted. */
  readonly mayHaveFed?: true;
  /** What its labels say; left out of the days that the first versions of this program sealed. */
  readonly label?: FlowLabel;
};

/** Who and when, by name. */
export type FlowLabel = Pick<LabelFacts, 'allergens' | 'pieces' | 'useBy'> & {
  readonly begunBy: string | null;
  readonly stands: (Signed & Pick<NonNullable<LabelFacts['stands']>, 'heldUntil'>) | null;
  readonly kept: (Signed & Pick<NonNullable<LabelFacts['kept']>, 'weightKg' | 'lastDay'>) | null;
};

/** So much from a lot, or from a tub of another batch; from neither: nobody knows from where. */
export type Source = {
  readonly lot: LotId | null;
  readonly of: BatchId | null;
  readonly pieces: number;
  readonly weightKg: Kilograms;
};

/** What a batch leaves in a tub, and which batches are made of it; the rest goes as `goes` says. */
export type TubFlow = {
  readonly tub: string;
  readonly name: Text;
  readonly goes: string;
  readonly weightKg: Kilograms;
  /** Whether a scale showed it; else it is reckoned by the cut's usual share. */
  readonly isWeighed?: boolean;
  readonly to: readonly { readonly batch: BatchId; readonly weightKg: Kilograms }[];
};
