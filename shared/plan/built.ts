import type { Round, Tub } from '../catalogue/index.ts';
import type {
  BatchId,
  Celsius,
  CutId,
  DishId,
  Instant,
  Kilograms,
  Metres,
  MixId,
  RouteId,
  Seconds,
  ServiceId,
  StationId,
  StepId,
  TaskId,
  Text,
} from '../kernel/index.ts';
import type { Mode, Problem, ResourceId } from '../schedule/index.ts';
import type { LimitRow } from './limits.ts';
import type { PlanRefusal } from './refusal.ts';

/**
 * A cook plan worked out: what to pull, what to do to it, and the scheduling problem that it makes.
 * Times inside are seconds from `origin`; services keep the instants that the hub resolved from
 * local time, once.
 */
export type BuiltDay = {
  readonly day: string;
  readonly zone: string;
  readonly origin: Instant;
  readonly services: readonly PlannedService[];
  readonly batches: readonly Batch[];
  readonly tasks: readonly Task[];
  readonly pull: readonly PullLine[];
  readonly mixes: readonly MixLine[];
  readonly tubs: readonly TubLine[];
  readonly problem: Problem;
  /** What a plan keeps to where it can: time in hand, and fires that need not change. */
  readonly aims: readonly Aim[];
  readonly upkeep: readonly Upkeep[];
  /** The rows of the profile of limits that clashes name as their reason. */
  readonly rows: readonly LimitRow[];
  /** Rounds that nobody is free for. */
  readonly unattended: readonly Unattended[];
};

/**
 * A wait that should last so long, a start that all before it should be ready for so long ahead, or
 * a fire that a smoker should keep.
 */
export type Aim =
  | {
      readonly kind: 'lasts' | 'ready-ahead';
      readonly activity: TaskId;
      readonly leastS: Seconds;
    }
  | { readonly kind: 'keeps-fire'; readonly fire: ResourceId; readonly state: string };

/**
 * A thing of the kitchen that asks for work while it is in use, whatever is made with it: a smoker
 * for wood, a table for a wash. Its tasks name it where others name their batch.
 */
export type Upkeep = Pick<Batch, 'id' | 'name' | 'service'> & {
  /** It is in use while one of these is. */
  readonly uses: readonly ResourceId[];
  /** Of a raw table: what lies on it. */
  readonly board: ResourceId | null;
  /** So long before its use it must be ready: a preheat. */
  readonly aheadS: Seconds;
  /** Two uses that are closer together are one. */
  readonly quietS: Seconds;
  readonly rounds: readonly UpkeepRound[];
};

export type UpkeepRound = Pick<Round, 'when' | 'everyS' | 'earlyS' | 'lateS'> & {
  /** Its task, but for the name that each time has. */
  readonly task: Omit<Task, 'id'>;
  readonly modes: readonly Mode[];
};

export type Unattended = {
  readonly upkeep: BatchId;
  readonly step: StepId;
  readonly atS: Seconds;
};

export type PlannedService = {
  readonly id: ServiceId;
  readonly name: Text;
  readonly opensAt: Instant;
  readonly closesAt: Instant;
  /** Portions asked for in each quarter of an hour from the opening on. */
  readonly demand: readonly {
    readonly dish: DishId;
    readonly portionsPerQuarter: readonly number[];
  }[];
};

/** The pieces that go through a route together, to stand ready together. */
export type Batch = {
  readonly id: BatchId;
  readonly name: Text;
  readonly service: ServiceId;
  readonly dish: DishId;
  readonly cut: CutId;
  /** The cut that is pulled for it; null where it is made of what others leave. */
  readonly bought: CutId | null;
  readonly route: RouteId;
  readonly pieces: number;
  readonly rawKg: Kilograms;
  readonly trimmedKg: Kilograms;
  readonly cookedKg: Kilograms;
  readonly servedKg: Kilograms;
  readonly portions: number;
  /** When it must be begun if nothing is to wait and nothing to run over. */
  readonly beginByS: Seconds;
  /** When its first portion must stand ready. */
  readonly neededS: Seconds;
};

/**
 * What a step of one batch is to a person; its times, hands and places are in the schedule under
 * the same id.
 */
export type Task = {
  readonly id: TaskId;
  /** The batch that it is done to, or the thing of the kitchen that it keeps up. */
  readonly batch: BatchId;
  readonly step: StepId;
  readonly work: Work;
  /** The imperative line of a wall: verb and cut, `Square spare ribs`. */
  readonly title: Text;
  /** The same as a noun, in a word or two: `squaring`, `the set`. */
  readonly short?: Text;
  /** The one thing to mind. */
  readonly mind?: Text;
  readonly caution?: Text;
  readonly pieces: number;
  /** What one piece is called here: `slab`, `slabs`; `shoulder`, `shoulders`. */
  readonly piece: { readonly one: Text; readonly many: Text };
  /** So many lie on a tray, and are counted at once; left out: piece by piece. */
  readonly trayHolds?: number;
  /** There are no pieces in the hand here: it is said and done by weight. */
  readonly byWeight?: true;
  readonly weightKg: Kilograms;
  /** The wall it is shown on; pit work is shown on the smoker wall's station. */
  readonly station: StationId;
  readonly mix?: { readonly mix: MixId; readonly name: Text; readonly weightKg: Kilograms };
  /** Of a stay: the pieces of the load, by the number of the need that it fills. */
  readonly loads?: readonly number[];
  /** Of a stay: what one of its pieces, or its pans, takes up on a rack. */
  readonly lies?: { readonly lengthM: Metres; readonly widthM: Metres };
  /** What the thermometer or the hand must find before it is done. */
  readonly check?: Check;
};

/**
 * Who does the work: `hands` are attended; `fire` is a stage of the cook; `wait` is a set, a rest,
 * a hold; `place` is the stay of one rack load in its slot, from load to off, which the others
 * happen inside of.
 */
export type Work = 'hands' | 'fire' | 'wait' | 'place';

export type Check = {
  readonly feel: Text;
  /** What is felt as long as it is not so. */
  readonly notYet?: Text;
  readonly coreAtLeastC?: Celsius;
  /** Of what is cooled. */
  readonly coreAtMostC?: Celsius;
  /** Left out: as long as a reading takes. */
  readonly heldS?: Seconds;
  /** Whose limit it must keep; left out: of the cook, if it names a core. */
  readonly of?: 'the cook' | 'reheating' | 'cooling' | 'holding';
};

export type PullLine = {
  readonly cut: CutId;
  readonly name: Text;
  readonly pieces: number;
  readonly weightKg: Kilograms;
  /** When the first of it is needed out of the cooler. */
  readonly byS: Seconds;
};

export type MixLine = {
  readonly mix: MixId;
  readonly name: Text;
  readonly weightKg: Kilograms;
  readonly parts: readonly { readonly ingredient: Text; readonly weightKg: Kilograms }[];
  readonly allergens: readonly string[];
};

/** A tub of trim that a batch is expected to leave, weighed once at the end of its trimming. */
export type TubLine = {
  readonly batch: BatchId;
  readonly tub: string;
  readonly name: Text;
  readonly weightKg: Kilograms;
  readonly goes: Tub['goes'];
};

/** A day, or all that keeps it from being one. */
export type Built =
  | { readonly ok: true; readonly day: BuiltDay }
  | { readonly ok: false; readonly refusals: readonly PlanRefusal[] };
