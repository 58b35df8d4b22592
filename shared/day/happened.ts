import type {
  BatchId,
  Celsius,
  CommandId,
  CutId,
  DayId,
  DishId,
  Instant,
  Kilograms,
  LotId,
  PersonId,
  ServiceId,
  SmokerId,
  TaskId,
  Text,
} from '../kernel/index.ts';
import { unreachable } from '../kernel/index.ts';
import type { CureWeighed } from './cure-fact.ts';
import type { Deed } from './deed.ts';
import { type Door, doorsAfter } from './door.ts';
import type { Event, EventHead } from './event.ts';
import type { Happening } from './happening.ts';
import type { Lot } from './lot.ts';
import { type TubKey, tubKey } from './tub-fact.ts';

/** What has happened to a day besides its tasks. */
export type Happened = {
  /** When smokers were down or cold, in the order it was said. */
  readonly spells: readonly Spell[];
  /** When smokers' doors were opened, as somebody told. */
  readonly doors: readonly Door[];
  /** Who is out now. */
  readonly out: ReadonlyMap<PersonId, Absence>;
  readonly deliveries: ReadonlyMap<CutId, Delivery>;
  /** What came and was not used up before this day, in the order in which it came. */
  readonly lots: ReadonlyMap<LotId, Lot>;
  /** Which lots a person said a batch was cut from. */
  readonly cutFrom: ReadonlyMap<BatchId, readonly LotId[]>;
  /** Curing salt that two people have weighed, by the task that it goes on in. */
  readonly cures: ReadonlyMap<TaskId, CureWeighed>;
  /** Trim that went over the scale, by `tubKey`. */
  readonly tubs: ReadonlyMap<TubKey, Deed & { readonly weightKg: Kilograms }>;
  readonly sold: ReadonlyMap<SaleKey, number>;
  readonly soldOut: ReadonlyMap<SaleKey, Deed>;
  readonly emptied: ReadonlyMap<BatchId, Deed>;
  /** What this day keeps for others. */
  readonly carried: ReadonlyMap<BatchId, Kilograms>;
  readonly closed: DayClosed | null;
};

/** A smoker that was down or cold, from a reading till another; `until` is null while it is. */
export type Spell = {
  readonly smoker: SmokerId;
  readonly kind: 'down' | 'cold';
  readonly from: Instant;
  readonly tempC: Celsius;
  readonly backAt: Instant | null;
  readonly until: Instant | null;
};

export type Absence = { readonly since: Instant; readonly backAt: Instant | null };
export type Delivery = Deed & { readonly pieces: number; readonly weightKg: Kilograms };
export type DayClosed = Deed & {
  readonly goesOn: readonly BatchId[];
  readonly left: readonly BatchId[];
};

/** What a day kept for others of one batch. */
export type KeptFood = {
  /** When it was made: its date mark counts from there. */
  readonly day: DayId;
  readonly dish: DishId;
  readonly name: Text;
  readonly weightKg: Kilograms;
  /** Whole portions that it gives. */
  readonly portions: number;
  /** When somebody said that it was kept. */
  readonly at: Instant;
};

export type SaleKey = `${string}#${string}`;

/** A dish at a service. @example saleKey('noon', 'ribs') //=> 'noon#ribs' */
export const saleKey = (service: ServiceId, dish: DishId): SaleKey => `${service}#${dish}`;

export const nothingHappened: Happened = {
  spells: [],
  doors: [],
  out: new Map(),
  deliveries: new Map(),
  lots: new Map(),
  cutFrom: new Map(),
  cures: new Map(),
  tubs: new Map(),
  sold: new Map(),
  soldOut: new Map(),
  emptied: new Map(),
  carried: new Map(),
  closed: null,
};

/**
 * What of a day still holds on the next: a smoker that is down stays so over night, and of lots
 * there is what was left of them.
 */
export function overNight(happened: Happened, lots: Happened['lots']): Happened {
  const spells = happened.spells.filter(({ until }) => until === null);
  return { ...nothingHappened, spells, lots };
}

const kinds: Readonly<Record<Happening['kind'], true>> = {
  smokerWentDown: true,
  smokerRunsCold: true,
  smokerCameUp: true,
  doorOpened: true,
  handWentOut: true,
  handCameIn: true,
  deliveryCame: true,
  lotCame: true,
  batchCutFrom: true,
  cureWeighed: true,
  tubWeighed: true,
  portionsSold: true,
  panEmptied: true,
  dishSoldOut: true,
  leftCarriedOver: true,
  dayClosed: true,
  undone: true,
};

/** Whether an event is of those that happen to the day besides its tasks. */
export function isHappening<E extends { readonly kind: string }>(
  event: E,
): event is Extract<E, { readonly kind: Happening['kind'] }> {
  return Object.hasOwn(kinds, event.kind);
}

/** What has happened after one more thing did; `undone` is the fold's. */
export function foldHappening(
  before: Happened,
  event: Exclude<Happening, { kind: 'undone' }> & EventHead,
): Happened {
  const deed: Deed = { at: event.at, by: event.personId };
  switch (event.kind) {
    case 'smokerWentDown':
    case 'smokerRunsCold':
    case 'smokerCameUp':
      return { ...before, spells: spellsAfter(before.spells, event) };
    case 'doorOpened':
      return { ...before, doors: doorsAfter(before.doors, event) };
    case 'handWentOut': {
      const absence: Absence = { since: event.at, backAt: event.backAt };
      return { ...before, out: new Map(before.out).set(event.hand, absence) };
    }
    case 'handCameIn': {
      const out = new Map(before.out);
      out.delete(event.hand);
      return { ...before, out };
    }
    case 'deliveryCame': {
      const { pieces, weightKg } = event;
      const delivery: Delivery = { ...deed, pieces, weightKg };
      return { ...before, deliveries: new Map(before.deliveries).set(event.cut, delivery) };
    }
    case 'lotCame': {
      const { lot: id, cut, pieces, weightKg, supplier, tempC, useBy, code } = event;
      const lot: Lot = {
        ...{ ...deed, id, cut, pieces, weightKg, supplier, tempC, useBy, code },
        leftPieces: pieces,
      };
      return { ...before, lots: new Map(before.lots).set(id, lot) };
    }
    case 'batchCutFrom':
      return { ...before, cutFrom: new Map(before.cutFrom).set(event.batch, event.lots) };
    case 'cureWeighed': {
      const { task, weightKg, first, second } = event;
      const weighed = { ...deed, weightKg, first, second };
      return { ...before, cures: new Map(before.cures).set(task, weighed) };
    }
    case 'tubWeighed': {
      const weighed = { ...deed, weightKg: event.weightKg };
      return { ...before, tubs: new Map(before.tubs).set(tubKey(event.batch, event.tub), weighed) };
    }
    default:
      return foldSale(before, event, deed);
  }
}

type SaleKind = 'portionsSold' | 'panEmptied' | 'dishSoldOut' | 'leftCarriedOver' | 'dayClosed';

function foldSale(
  before: Happened,
  event: Extract<Happening, { kind: SaleKind }>,
  deed: Deed,
): Happened {
  switch (event.kind) {
    case 'portionsSold': {
      const sold = new Map(before.sold).set(saleKey(event.service, event.dish), event.sold);
      return { ...before, sold };
    }
    case 'dishSoldOut': {
      const soldOut = new Map(before.soldOut).set(saleKey(event.service, event.dish), deed);
      return { ...before, soldOut };
    }
    case 'panEmptied':
      return { ...before, emptied: new Map(before.emptied).set(event.batch, deed) };
    case 'leftCarriedOver': {
      const carried = new Map(before.carried).set(event.batch, event.weightKg);
      return { ...before, carried };
    }
    case 'dayClosed':
      return { ...before, closed: { ...deed, goesOn: event.goesOn, left: event.left } };
    default:
      return unreachable(event);
  }
}

type SmokerKind = 'smokerWentDown' | 'smokerRunsCold' | 'smokerCameUp';

function spellsAfter(
  spells: readonly Spell[],
  event: Extract<Happening, { kind: SmokerKind }> & EventHead,
): Spell[] {
  const { smoker, at, tempC } = event;
  const ended = spells.map((spell) =>
    spell.smoker === smoker && spell.until === null ? { ...spell, until: at } : spell,
  );
  if (event.kind === 'smokerCameUp') return ended;
  const kind = event.kind === 'smokerWentDown' ? 'down' : 'cold';
  const backAt = event.kind === 'smokerWentDown' ? event.backAt : null;
  return [...ended, { smoker, kind, from: at, tempC, backAt, until: null }];
}

/** The events that stand: those of commands that were undone, and the undoing, left out. */
export function standing(events: readonly Event[]): Event[] {
  const undone = new Set<CommandId>(
    events.flatMap((event) => (event.kind === 'undone' ? [event.command] : [])),
  );
  return events.filter(({ kind, commandId }) => kind !== 'undone' && !undone.has(commandId));
}
