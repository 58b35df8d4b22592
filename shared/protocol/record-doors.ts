import type {
  BatchId,
  CutId,
  DayId,
  Instant,
  Kilograms,
  LocalDay,
  LotId,
  ServiceId,
} from '../kernel/index.ts';
import type { DayEvidence, LotShare, LotTrace } from '../record/index.ts';
import type { Refusal, Text } from '../view/index.ts';

export type { AmendedRow, CheckRow, LotShare, LotTrace } from '../record/index.ts';

/** What there is on record, and what is in the cooler. */
export type RecordShown = {
  readonly days: readonly DayShown[];
  /** The fingerprint of the key that days are signed with. */
  readonly key: string;
  /** Of what was not read when the hub was started. */
  readonly chain: 'whole' | 'under way' | 'broken';
  readonly lots: readonly LotShown[];
  readonly pulls: readonly PullShown[];
  /** Trim of what is worked on, as a scale showed it or as it is reckoned. */
  readonly trim: readonly TrimShown[];
  /** What can come: every cut that is bought, those of the day's pull list first. */
  readonly cuts: readonly CutShown[];
};

export type TrimShown = {
  readonly batch: BatchId;
  readonly name: Text;
  readonly tub: string;
  readonly tubName: Text;
  readonly weightKg: Kilograms;
  readonly isWeighed: boolean;
};

export type CutShown = {
  readonly cut: CutId;
  readonly name: Text;
  /** As many as the pull list asks for; null where it asks for none. */
  readonly listed: number | null;
  /** What a piece of it weighs as it comes, by the catalogue. */
  readonly usualKg: Kilograms;
};

export type DayShown = {
  readonly day: DayId;
  readonly closed: { readonly at: Instant; readonly by: string | null } | null;
  /** The head of its chain as it was signed; null while it runs. */
  readonly head: string | null;
};

export type LotShown = {
  readonly id: LotId;
  readonly cut: CutId;
  readonly name: Text;
  readonly pieces: number;
  readonly leftPieces: number;
  readonly isSentBack: boolean;
  readonly weightKg: Kilograms;
  readonly supplier: string;
  readonly useBy: LocalDay | null;
};

/** A batch of the running day, and the lots that it is cut from, or is to be. */
export type PullShown = {
  readonly batch: BatchId;
  readonly name: Text;
  readonly cut: CutId;
  readonly isBegun: boolean;
  readonly lots: readonly { readonly lot: LotId | null; readonly pieces: number }[];
};

/** A lot forward, and from everything that it went to back to all that was in that. */
export type LotTraced = {
  readonly trace: LotTrace;
  readonly back: readonly {
    readonly day: DayId;
    readonly batch: BatchId;
    readonly lots: readonly LotShare[];
  }[];
  readonly fed: readonly {
    readonly day: DayId;
    readonly service: ServiceId;
    readonly lots: readonly LotShare[];
  }[];
};

/** What was checked on a day and what was taken back, or the running one's. */
export type DayAnswered = { readonly evidence: Pick<DayEvidence, 'checks' | 'amended'> };

export type SheetAsk = {
  readonly as: 'html' | 'csv' | 'json' | 'labels';
  readonly from: string;
  readonly to: string;
  readonly language: 'en' | 'es';
  /** Of labels: of that lot or batch alone, each on a page of its own. */
  readonly only?: string;
  /** From where the desk was opened; labels lead there. */
  readonly at?: string;
};

/** A file to be opened or kept. */
export type SheetMade = { readonly name: string; readonly type: string; readonly text: string };

export type RecordAnswer<Found> =
  | ({ readonly ok: true } & Found)
  | { readonly ok: false; readonly refusal: Refusal };
