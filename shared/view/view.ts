import type { Because, LimitAt, TubStanding } from '../day/index.ts';
import type {
  BatchId,
  Celsius,
  CommandId,
  CutId,
  Instant,
  Kilograms,
  PersonId,
  Seconds,
  ServiceId,
  SmokerId,
  StationId,
  TaskId,
  Text,
} from '../kernel/index.ts';
import type { Check, SlotName, Work } from '../plan/index.ts';
import type { CheckView } from './check-view.ts';
import type { CookDrawing } from './cook-drawing.ts';
import type { HeldBy } from './held-by.ts';
import type { NewsLine } from './news-line.ts';

export type ViewHead = {
  readonly seq: number;
  /** The last event that changed who does what or what sits where: offers made before are stale. */
  readonly arrangedSeq: number;
  /** The hub's clock when this was made. */
  readonly at: Instant;
  readonly zone: string;
  readonly clock: '12 h' | '24 h';
  readonly temperature: '°F' | '°C';
  readonly weight: 'lb' | 'kg';
  readonly services: readonly ServiceOutlook[];
  /** The last decision and what it moved, while it is new. */
  readonly news: NewsLine | null;
  /** When the last service of the day closes. */
  readonly endsAt: Instant;
  /** That somebody has closed the day, and by which command. */
  readonly closed: ClosedDay | null;
  readonly people: readonly Person[];
  /** What has to be looked at, or put right, where this face belongs: what is wrong first. */
  readonly checks: readonly CheckView[];
};

export type ClosedDay = {
  readonly at: Instant;
  readonly by: string | null;
  readonly command: CommandId;
};

export type StationView = ViewHead & {
  readonly face: 'station';
  /** One, or several that share the wall. */
  readonly stations: readonly { readonly id: StationId; readonly name: Text }[];
  /** In the order of their projected starts; what is long done is left out. */
  readonly tasks: readonly TaskView[];
  /** Tasks further on than those. */
  readonly later: number;
};

export type SmokerView = ViewHead & {
  readonly face: 'smoker';
  readonly smokers: readonly SmokerDrawing[];
  readonly tasks: readonly TaskView[];
  readonly later: number;
};

/**
 * What is known of a service's promise; minutes in hand fall below nought when it will be short.
 */
export type ServiceOutlook = {
  readonly id: ServiceId;
  readonly name: Text;
  readonly opensAt: Instant;
  readonly inHandS: Seconds;
  /** The first task of the chain that decides it. */
  readonly hangsOn: TaskId | null;
  /** How that holds it up; absent where it will not be late. */
  readonly heldBy?: HeldBy;
};

export type Person = {
  readonly id: PersonId;
  readonly name: string;
  /** In which their own screen speaks; absent where nobody says. */
  readonly language?: 'en' | 'es';
  readonly onShift: boolean;
  /** Said to be away, whatever the shift is. */
  readonly isOut: boolean;
  /** When an absent hand is thought to be back; null where nobody says. */
  readonly backAt: Instant | null;
};

/** Where raw meat lies, and where it must not. */
export type Side = 'raw' | 'clean';

export type TaskState = 'waiting' | 'ready' | 'running' | 'done';

/** What is weighed of a cure, and who did; null while nobody has. */
export type CureView = {
  readonly mix: Text;
  readonly weightKg: Kilograms;
  readonly weighed: {
    readonly weightKg: Kilograms;
    readonly first: string;
    readonly second: string;
  } | null;
};

export type TaskView = {
  readonly id: TaskId;
  readonly batch: BatchId;
  readonly batchName: Text;
  readonly service: ServiceId;
  /** Which smoker, table or cabinet a round is for; other work has none. */
  readonly thing?: Text;
  readonly work: Work;
  readonly title: Text;
  readonly mind?: Text;
  readonly caution?: Text;
  readonly check?: Check;
  /** How hot or cold the food must be at it, by the limits of its kitchen. */
  readonly limit?: LimitAt;
  readonly mix?: { readonly name: Text; readonly weightKg: Kilograms };
  /** Curing salt goes on in it, which two people weigh before it is begun. */
  readonly cure?: CureView;
  /** The tubs of trim that are full once it is done; absent where it ends no trimming. */
  readonly tubs?: readonly TubStanding[];
  /** Whose standard it is done to; null where it is about no food. */
  readonly cut: CutId | null;
  readonly pieces: number;
  readonly piece: { readonly one: Text; readonly many: Text };
  /** So many lie on a tray, and are counted at once; absent: piece by piece. */
  readonly trayHolds?: number;
  /** There is nothing to count in the hand here. */
  readonly byWeight?: true;
  readonly weightKg: Kilograms;
  readonly hand: PersonId | null;
  /** Who has been shown it: nobody else can be given it. */
  readonly shownTo: readonly PersonId[];
  readonly side: Side;
  /** Its hands come straight from raw meat to it. */
  readonly offRaw: boolean;
  /** Where its pieces lie, or are to lie, while it is done; absent: not at a smoker. */
  readonly racks?: readonly SlotName[];
  readonly state: TaskState;
  readonly plannedStartAt: Instant;
  /** Projected, or the fact once it is one. */
  readonly startAt: Instant;
  readonly endAt: Instant;
  /** The doubt of the end; equal to `endAt` where there is none. */
  readonly endLowAt: Instant;
  readonly endHighAt: Instant;
  readonly counted: number;
  readonly helpAskedAt: Instant | null;
  /** What it waits for, or what moved it. */
  readonly because: Because | null;
  /**
   * The lags by which a screen that is alone moves times: starts no sooner than `lagS` after that
   * end.
   */
  readonly after: readonly {
    readonly task: TaskId;
    readonly end: 'start' | 'end';
    readonly lagS: Seconds;
  }[];
};

export type SmokerDrawing = {
  readonly id: SmokerId;
  readonly name: Text;
  readonly heat: 'below' | 'above' | 'side';
  readonly setC: Celsius | null;
  readonly lastAir: {
    readonly tempC: Celsius;
    readonly at: Instant;
    readonly trendCPerHour: number;
  } | null;
  /** When its door was last opened, within the last half hour. */
  readonly openedAt: Instant | null;
  /** Between which readings its air fell while nobody read it; absent where it did not lately. */
  readonly unseen?: { readonly from: Instant; readonly to: Instant };
  /** While meat lies in it whose air nobody has read for long: who is to, and by when. */
  readonly unread?: { readonly byAt: Instant; readonly name?: string };
  /** While it is down, or runs cold: since when, and when somebody has it back. */
  readonly spell: {
    readonly kind: 'down' | 'cold';
    readonly since: Instant;
    readonly backAt: Instant | null;
    /** Who is called to it, and by when; absent where nobody is here. */
    readonly call?: { readonly who: PersonId; readonly name: string; readonly byAt: Instant };
  } | null;
  readonly racks: readonly RackDrawing[];
};

export type RackDrawing = {
  readonly slot: SlotName;
  readonly lengthM: number;
  readonly depthM: number;
  readonly loads: readonly LoadDrawing[];
};

/** A load that is in the slot, or that will come. */
export type LoadDrawing = {
  readonly stay: TaskId;
  readonly need: number;
  readonly batchName: Text;
  readonly cut: CutId;
  readonly pieces: number;
  readonly pieceLengthM: number;
  readonly pieceWidthM: number;
  readonly piece: { readonly one: Text; readonly many: Text };
  readonly fatCap: boolean;
  readonly here: boolean;
  readonly inAt: Instant;
  /** What happens to it next, in short where it can be: wrap, check, off; with its range. */
  readonly next: {
    readonly title: Text;
    readonly lowAt: Instant;
    readonly at: Instant;
    readonly highAt: Instant;
  } | null;
  readonly outAt: Instant;
  readonly lastCore: { readonly tempC: Celsius; readonly at: Instant } | null;
  /** Null before anything is foreseen of it. */
  readonly cook: CookDrawing | null;
};
