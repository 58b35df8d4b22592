import type { CheckKind } from '../day/index.ts';
import type { BatchId, DishId, Instant, ServiceId, Text } from '../kernel/index.ts';
import type { PlannedService, Task } from '../plan/index.ts';

export type PassService = Pick<PlannedService, 'id' | 'name' | 'opensAt' | 'closesAt'>;

export type PassDish = {
  readonly dish: DishId;
  readonly name: Text;
  /** What the law asks to be named of it, as the catalogue calls it. */
  readonly allergens: readonly string[];
  /** Portions expected to be asked for in each quarter of an hour from the opening on. */
  readonly perQuarter: readonly number[];
  /** Counted at the pass: in this service, and in those before it today. */
  readonly sold: number;
  readonly soldBefore: number;
  /** Since when nobody is to be promised any. */
  readonly soldOutAt: Instant | null;
  /** Every batch of it that can still be sold from, or will be, by when it is ready. */
  readonly pans: readonly PassPan[];
};

/** What a batch is at the pass: pans of it, or whole pieces to be cut to order. */
export type PassPan = {
  readonly batch: BatchId;
  readonly name: Text;
  readonly service: ServiceId;
  readonly pieces: number;
  readonly piece: Task['piece'];
  readonly portions: number;
  /** `held`: in the cabinet, but still to be cut or set out. */
  readonly stage: 'coming' | 'held' | 'ready';
  /** When it can be sold from: the fact, or as things stand between these two at the likeliest. */
  readonly readyAt: Instant;
  readonly readyLowAt: Instant;
  readonly readyHighAt: Instant;
  /** What brings it from where it is held to the board: "Slice the first brisket". */
  readonly setOut: Text;
  /** Null while it is not held yet, and where nothing limits it. */
  readonly heldUntil: Instant | null;
  /** A hand has said that nothing is left of it. */
  readonly isEmptied: boolean;
  /** What keeps it from being sold: a limit that was not kept, or that nobody looked at. */
  readonly barred: { readonly why: 'failed' | 'missed'; readonly check: CheckKind } | null;
  /**
   * Of what can be sold from no more: how many of its dish were counted till then. Null while it
   * can, and where a hand has said that it is empty, for then it went out.
   */
  readonly soldTill: number | null;
};
